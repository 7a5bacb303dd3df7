import fc from 'fast-check';

/** Text that breaks careless readers. Invented, but for what browsers, terminals and number formats are known to trip over. */
const TRAPS: readonly string[] = [
  '', ' ', '\0', '\n', '\u2028', '\ufeff', '\u202e', '\u200b', '\ud800', '\udfff', '\udc00\ud800', 'é'.normalize('NFD'),
  '<img src=x onerror=alert(1)>', '<script>alert(1)</script>', '"><svg onload=alert(1)>', 'javascript:alert(1)', '${7*7}', '{{7*7}}',
  '&lt;', '&#0;', '%', '%00', '%ff', '%E0%A4%A', '%ud800', '../../etc/passwd', "'; DROP TABLE shots; --", '__proto__', 'constructor',
  'toString', 'hasOwnProperty', 'NaN', 'Infinity', '-Infinity', 'undefined', 'null', 'true', '[object Object]',
  '0', '-0', '+0', '00', '0.0', '1e308', '1e309', '-1e308', '1e-324', '5e-324', '0x10', '0b1', '1_000', '1n', '9007199254740993',
  '1/0', '0/0', '1/-1', '1//1', '1/1/1', '1 1/0', '1/1e400', '.', ',', '-', '−', '+-1', '--1', '1.2.3', '1,2,3', '١٢٣', '１２', '𝟭𝟮', '½½', 'Ⅷ', '²', '¹⁄₆₀',
  '9'.repeat(400), `0.${'0'.repeat(400)}1`, `1/${'9'.repeat(400)}`, `f/${'0'.repeat(5000)}8`,
];

/** Pieces settings, lengths, lights and links are made of: what comes near the grammar finds more than noise. */
const PIECES: readonly string[] = [
  '0', '1', '2', '3', '6', '8', '11', '25', '60', '100', '1/60', '0"6', '0.6', '0,6', '1/3', '½', 'f/', 'F', 'ƒ', '1:', '/', '"', "'", '″', 's', 'sec', 'min', 'ms',
  'iso', 'ISO ', 'k', ' ', '  ', '\n', '\t', ',', ';', '.', ':', '-', '−', '+', '±', '(', ')', '=', '&', '#', '%', '~', '_', '→', 'to', 'then',
  'mm', 'cm', 'in', 'ft', 'm', '°', 'stop', 'stops', 'EV', 'under', 'over', 'darker', 'same light', 'meter says', 'too dark', 'correct by', '1.', '2)',
  'lamp', 'bulb', 'disc', 'flag', 'at', 'aim', 'facing', 'table', 'x', '×', '30x40', '(1, 2, 3)', 'shot=1', 'aperture=', 'lights=', 'note=', 'crop=',
];

/** Any 16-bit code units, lone halves of pairs included. */
const units = fc.array(fc.integer({min: 0, max: 0xffff}), {maxLength: 30}).map((codes) => String.fromCharCode(...codes));
const nearGrammar = fc.array(fc.constantFrom(...PIECES), {maxLength: 14}).map((pieces) => pieces.join(''));
const mixed = fc.array(fc.oneof({weight: 3, arbitrary: fc.constantFrom(...PIECES)}, fc.constantFrom(...TRAPS), units), {maxLength: 6})
  .map((parts) => parts.join(''));
/** Long enough that time that grows with the square of the length would never end. */
const giant = fc.tuple(fc.oneof(fc.constantFrom(...PIECES), fc.constantFrom(...TRAPS.filter((trap) => trap.length < 40))), fc.integer({min: 20_000, max: 200_000}))
  .map(([piece, length]) => piece.repeat(Math.ceil(length / Math.max(1, piece.length))));

/** Short texts of every kind. */
export const anyHostile: fc.Arbitrary<string> = fc.oneof(
  {weight: 6, arbitrary: nearGrammar}, {weight: 2, arbitrary: fc.constantFrom(...TRAPS)}, {weight: 1, arbitrary: units},
  {weight: 2, arbitrary: mixed}, {weight: 1, arbitrary: fc.double().map(String)});

/** Texts of up to two hundred thousand characters. */
export const anyGiant: fc.Arbitrary<string> = giant;

/** Numbers nobody means: signs of zero, the ends of what a number can hold, none at all. */
export const anyNumber: fc.Arbitrary<number> = fc.oneof(
  {weight: 1, arbitrary: fc.constantFrom(0, -0, NaN, Infinity, -Infinity, 1e308, -1e308, 5e-324, Number.MAX_VALUE, Number.EPSILON, 2 ** 53, -1, 1)},
  {weight: 2, arbitrary: fc.double()}, {weight: 4, arbitrary: fc.double({min: 1e-3, max: 1e3, noNaN: true})});

/** Values of any JSON document, and strings that are hostile. */
export const anyJson: fc.Arbitrary<unknown> = fc.letrec<{json: unknown}>((tie) => ({
  json: fc.oneof({maxDepth: 3, withCrossShrink: true}, fc.oneof(anyHostile, fc.double({noNaN: true}), fc.boolean(), fc.constant(null)),
    fc.array(tie('json'), {maxLength: 4}), fc.dictionary(anyHostile, tie('json'), {maxKeys: 4})),
})).json;
