import {shotKeys} from '../../../src/core/shot/given.js';
import {DOCUMENT_FORMAT, DOCUMENT_LIMITS, DOCUMENT_VERSION, MADE, MEASURED, PICTURE, type MeasuredKind} from '../../../src/core/shot/document.js';
import {labelOf} from '../../../src/core/shot/labels.js';
import {DEFAULT_SHOT, type ShotKey} from '../../../src/core/shot/shot.js';
import {boundsOf, optionsOf} from './bounds.js';

type Schema = Readonly<Record<string, unknown>>;

const text = (maxLength: number): Schema => ({type: 'string', maxLength});
const place: Schema = {type: 'array', items: {type: 'number', minimum: -20_000, maximum: 20_000}, minItems: 3, maxItems: 3};
const size: Schema = {type: 'number', minimum: 1, maximum: 20_000};

/** Values that are no single number, word or text. */
const PARTS: Partial<Record<ShotKey, Schema>> = {
  crop: {
    type: 'object', required: ['left', 'top', 'width', 'height'], description: 'Shares of the frame; left + width and top + height at most 1',
    properties: {left: {type: 'number', minimum: 0}, top: {type: 'number', minimum: 0}, width: {type: 'number', exclusiveMinimum: 0}, height: {type: 'number', exclusiveMinimum: 0}},
  },
  focalLengths: {type: 'array', items: {type: 'number', minimum: 1, maximum: 5000}, minItems: 1},
  closestFocus: {type: 'array', items: {type: 'number', minimum: 1, maximum: 100_000}},
  lights: {
    type: 'object', required: ['lamps', 'flags', 'table'],
    properties: {
      lamps: {type: 'array', minItems: 1, maxItems: 12, items: {
        type: 'object', required: ['name', 'kind', 'position', 'aim', 'power'],
        properties: {
          name: {type: 'string', minLength: 1, maxLength: 30}, kind: {enum: ['bulb', 'small', 'disc', 'rectangle']}, position: place, aim: place,
          width: {type: 'number'}, height: {type: 'number'}, power: {type: 'number', minimum: -30, maximum: 30},
        },
        allOf: [
          {if: {properties: {kind: {enum: ['disc', 'rectangle']}}}, then: {required: ['width'], properties: {width: size}}},
          {if: {properties: {kind: {const: 'rectangle'}}}, then: {required: ['height'], properties: {height: size}}},
        ],
      }},
      flags: {type: 'array', maxItems: 12, items: {
        type: 'object', required: ['position', 'facing', 'width', 'height'], properties: {position: place, facing: place, width: size, height: size},
      }},
      table: {type: 'number', minimum: 0, maximum: 1},
    },
  },
};

/** What lies just outside a limit is a limit that does not belong: a number above 0. */
function numberOf(key: ShotKey): Schema {
  const {least, most, whole} = boundsOf(key);
  const options = [1, 2, 3, 4, 5].filter((value) => least !== undefined && most !== undefined && value >= least && value <= most);
  if (whole && most !== undefined && most < 5) return {enum: options};
  const low = least === undefined ? {} : least === Number.MIN_VALUE ? {exclusiveMinimum: 0} : {minimum: least};
  return {type: whole ? 'integer' : 'number', ...low, ...(most === undefined ? {} : {maximum: most})};
}

function valueOf(key: ShotKey): Schema {
  const like = DEFAULT_SHOT[key];
  const parts = PARTS[key];
  if (parts) return parts;
  if (typeof like === 'number') return numberOf(key);
  if (typeof like !== 'string') throw new Error(`${key}: a value made of parts needs its schema here`);
  const options = optionsOf(key);
  return options ? {enum: options} : text(DOCUMENT_LIMITS.text);
}

const KINDS: Readonly<Record<MeasuredKind, Schema>> = {
  text: text(DOCUMENT_LIMITS.title), positive: {type: 'number', exclusiveMinimum: 0}, share: {type: 'number', minimum: 0, maximum: 1}, room: {type: 'number', minimum: 0},
  flag: {type: 'boolean'}, code: {type: 'number', minimum: 0, maximum: 255}, stops: {type: 'number'},
};

/** The JSON Schema of a document of shots, from what the fields themselves refuse. */
export function buildSchema(): Schema {
  return {
    $schema: 'https://json-schema.org/draft/2020-12/schema',
    title: 'Shots of a Lampblack shot sheet',
    description: 'Lengths mm, times s, angles degrees, light in stops (positive = brighter). What is missing was not stated.',
    type: 'object',
    required: ['format', 'version', 'shots'],
    properties: {
      format: {const: DOCUMENT_FORMAT},
      version: {const: DOCUMENT_VERSION},
      shots: {type: 'array', maxItems: DOCUMENT_LIMITS.shots, items: {$ref: '#/$defs/shot'}},
    },
    $defs: {
      shot: {
        type: 'object',
        required: ['title', 'made', 'values', 'texts', 'measured'],
        properties: {
          title: text(DOCUMENT_LIMITS.title),
          made: {type: 'string', pattern: MADE.source, description: 'When the shot was kept, ISO 8601 with a zone'},
          values: {
            type: 'object', description: 'What was stated. Keys of later versions may stand here too',
            properties: Object.fromEntries(shotKeys().map((key) => [key, {title: labelOf(key), ...valueOf(key)}])),
          },
          texts: {type: 'object', description: 'Text as it was typed, by key of values', additionalProperties: text(DOCUMENT_LIMITS.text)},
          measured: {type: 'object', properties: Object.fromEntries(Object.entries(MEASURED).map(([key, kind]) => [key, KINDS[kind]]))},
          picture: {...text(DOCUMENT_LIMITS.picture), pattern: PICTURE.source},
        },
      },
    },
  };
}
