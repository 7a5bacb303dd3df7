import type {AdviceIntent, AimsWhy} from '../judgement.js';
import type {Channel} from '../../../../core/tone/tally.js';
import {photoWords} from '../../../shared/photo/words/en.js';
import type {Say} from '../../../shared/say.js';
import type {Shown} from '../chart-view.js';

export {family} from '../../../shared/words/en.js';

/** What is said of an open photo. Values come written: shares `0.3%`, stops `2/3 stop`, lists `red and green`. */
export const words = (say: Say) => ({
  ...photoWords,
  say,

  // the verdict, and why
  keepFits: (room: string) => `Keep it: nothing that matters is cut off, and the brightest tones lie ${room} below white.`,
  yoursGlints: (colours: string, many: boolean, share: string) =>
    `Your call: ${colours} ${many ? 'reach' : 'reaches'} white in only ${share} of the crop, as a glint on a lantern or a wet eye does.`,
  yoursBlack: (share: string) => `Your call: ${share} of the crop is black without detail, as a dark backdrop may be.`,
  keepBlack: (share: string) => `Keep it: ${share} of the crop is black without detail, and the highlights leave no room to lift it.`,
  againWhite: (stops: string, colours: string, many: boolean, share: string) =>
    `Shoot again, ${stops} darker: ${colours} ${many ? 'are' : 'is'} cut off at white in ${share} of the crop.`,
  againBlack: (stops: string, share: string) =>
    `Shoot again, ${stops} brighter: ${share} of the crop is cut off at black, and there is room to lift it.`,
  againDark: (stops: string, intent: AdviceIntent) =>
    `Shoot again, ${stops} brighter: ${intent === 'even' ? 'the picture is darker than middle gray' : 'the figure can take more light'}.`,
  againBright: (stops: string) => `Shoot again, ${stops} darker: the picture is brighter than middle gray.`,
  keepDark: 'Keep it: the picture is dark, but its highlights leave no room to lift it.',
  keepBright: 'Keep it: the picture is bright, but its shadows leave no room to lower it.',
  relight: (white: string, black: string) =>
    `Change the light and shoot again: ${white} of the crop is cut off at white and ${black} at black, and no exposure holds both.`,
  allBlack: 'Shoot again with more light: the crop is black all over.',

  softer: 'Soften or move the lamp, or lift the shadows with a reflector or a second lamp.',
  beyondWhite: 'How far the light reaches past white is not in the file and had to be estimated: look again after the next shot.',
  beyondBlack: 'How deep the shadows go is not in the file and had to be estimated: look again after the next shot.',
  cropFirst: 'If that lies where it will be trimmed off, draw the crop first.',
  ifNoGlint: (stops: string) => `Where it is skin, cloth or white paint, shoot again ${stops} darker.`,
  ifFigure: (stops: string) => `Where it is part of the figure, shoot again ${stops} brighter.`,
  fillLifts: 'A reflector or a second lamp would lift the shadows; more exposure would cost the highlights.',
  roomNow: (now: string, after: string) => `The brightest tones lie ${now} below white, and would then lie ${after} below it.`,
  roomBelow: (now: string, after: string) => `The darkest tones lie ${now} above black, and would then lie ${after} above it.`,
  leansLeft: 'Before a dark backdrop a chart that leans left is right.',
  middleFits: 'Half of the picture is darker and half is brighter than middle gray, to half a stop.',
  hiddenWhite: 'A chart of brightness alone would not show it.',
  hiddenBlack: (colours: string, many: boolean) =>
    `No ${colours} is left in the darkest parts, as in strong colours; more light would not bring ${many ? 'them' : 'it'} back.`,

  // what the crop did
  cropAll: 'The whole picture is counted. Draw the frame round what will be kept, so that what is trimmed off is not counted.',
  cropKeeps: (share: string) => `The crop keeps ${share} of the picture.`,
  cropReads: (share: string, edge: 'black' | 'white', now: string, whole: string) =>
    `The crop keeps ${share} of the picture and has ${now} with a colour at ${edge}, where the whole picture has ${whole}.`,
  cropMatters: (brief: string) => `Without the crop the answer would be: ${brief}.`,
  cropNoMatter: 'The answer would be the same without it.',
  brief: {
    keep: () => 'keep it', yours: () => 'your call', relight: () => 'change the light',
    brighter: (stops: string) => `${stops} brighter`, darker: (stops: string) => `${stops} darker`,
  } as Readonly<Record<'keep' | 'yours' | 'relight' | 'brighter' | 'darker', (stops: string) => string>>,
  transparent: 'There is nothing to count in this crop: all of it is transparent. The last reading stays.',

  // the photo and the frames over it
  picture: 'The photo, with the frame of what will be kept',
  frame: 'Crop frame',
  spotFrame: 'Spot that is measured',
  frameKeys: 'Arrow keys move the frame, with Shift they size it; Page Up and Page Down grow and shrink it. Home keeps the whole picture.',
  frameAt: (width: string, height: string, left: string, top: string) => `${width} by ${height}, ${left} from the left, ${top} from the top`,
  cropSize: (size: string, whole: string) => `${size} of ${whole}.`,
  cropWhole: (size: string) => `${size}, all of it.`,
  ownCrop: 'The next shot is set to be taken from elsewhere with a crop of its own; this photo keeps its crop.',
  keepAll: 'Keep it all',
  byNumbers: 'Crop by numbers',
  sides: {left: 'Left', top: 'Top', width: 'Width', height: 'Height'},
  sizeWanted: (pixels: string) => `a share up to 100%, or 1 to ${pixels} px`,
  placeWanted: (pixels: string) => `a share below 100%, or 0 to ${pixels} px`,

  // what the file told
  fromFile: (list: string) => `From the file: ${list}.`,
  notInFile: (list: string, many: boolean) => `Not in it: ${list}, so ${many ? 'those stay' : 'that stays'} as set here.`,
  fileSilent: 'The file does not say how it was taken: the settings that stand here are taken to be this photo’s.',
  lens: (length: string) => `${length} lens`,
  sensor: (width: string, about: boolean) => `${about ? 'about ' : ''}${width} of sensor`,
  missing: {aperture: 'aperture', shutter: 'shutter time', iso: 'ISO', focalLength: 'focal length', sensorWidth: 'sensor width'},

  // the chart
  chart: 'Show the chart of',
  shown: {colours: 'Colours', brightness: 'Brightness', red: 'Red', green: 'Green', blue: 'Blue'} as Readonly<Record<Shown, string>>,
  channels: {red: 'Red', green: 'Green', blue: 'Blue', brightness: 'Brightness'} as Readonly<Record<Channel, string>>,
  channelsInText: {red: 'red', green: 'green', blue: 'blue', brightness: 'brightness'} as Readonly<Record<Channel, string>>,
  letters: {red: 'R', green: 'G', blue: 'B', brightness: 'L'} as Readonly<Record<Channel, string>>,
  intent: 'The picture is meant as',
  intents: {'dark-backdrop': 'a lit figure, dark backdrop', even: 'even, as much light as dark'},
  table: 'How much is cut off inside the crop, and how many stops of room are left',
  columns: {channel: 'Colour', black: 'At black', below: 'Room below', white: 'At white', above: 'Room above'},
  anyColour: 'Any colour',
  black: 'black',
  white: 'white',
  gray: 'gray card',
  toBlack: (stops: string) => `${stops} stops to black`,
  toWhite: (stops: string) => `${stops} stops to white`,
  lost: 'cut off',
  none: 'none',
  noLight: 'no light',
  channelEdges: (channel: string, atBlack: string, atWhite: string, below: string, above: string) =>
    `${channel}: ${atBlack} at black, ${atWhite} at white, room below ${below}, above ${above}.`,
  scaleNote: 'Large figures: stops of light below white. Small ones: the value a pixel has there in the file, 0 to 255. Four times as many pixels stand twice as high, so that small things show.',
  dashed: 'Dashed: where the chart goes with the advice.',
  thin: 'Thin: the earlier shot.',

  // a spot
  measure: 'Measure a spot',
  isCard: 'The spot is the gray card',
  noCard: 'Forget the gray card',
  spotBlack: (value: string) => `The spot is black: pixel value ${value} of 255.`,
  spotOn: (measured: boolean, value: string) => `The spot lies on ${measured ? CARD_MEASURED : CARD_MEANT}: pixel value ${value} of 255.`,
  spotOff: (stops: string, above: boolean, measured: boolean, value: string) =>
    `The spot lies ${stops} ${above ? 'above' : 'below'} ${measured ? CARD_MEASURED : CARD_MEANT}: pixel value ${value} of 255.`,
  spotMean: (mean: string, spread: string, values: string) =>
    `It sends back ${mean} of the light of white, give or take ${spread}. Red, green and blue have pixel values ${values}.`,
  spotAtWhite: (share: string) => `${share} of it is cut off at white, so it is brighter than that.`,
  spotAtBlack: (share: string) => `${share} of it has no light left in one of the colours.`,

  // where the figure's lights and darks should sit
  aims: 'Where the figure’s lights and darks should sit',
  aimNames: {highlights: 'Highlights at', shadows: 'Shadows at least', backdrop: 'Backdrop fills'},
  aimHints: {highlights: 'pixel value, 0 to 255', shadows: 'pixel value, 0 to 255', backdrop: 'of the crop'},
  valueWanted: 'a pixel value from 1 to 254, shadows below highlights',
  shareWanted: 'a share below 100%',
  aimsUnknown: 'The highlights are cut off as shot, so nobody knows where they lie: take the advice first, shoot again and look here then.',
  aimsFit: (highlights: string, shadows: string, aim: string) =>
    `As shot, highlights sit at ${highlights} and shadows at ${shadows}: within a third of a stop of the aim of ${aim}.`,
  aimsAsk: (stops: string, brighter: boolean, highlights: string, shadows: string) =>
    `This aim asks for ${stops} ${brighter ? 'more' : 'less'}: highlights then sit at ${highlights} and shadows at ${shadows}.`,
  aimsDiffer: (answer: string, why: AimsWhy) => `The answer at the top goes first: ${answer}. ${AIMS_WHY[why]}`,
  shadowsShort: (stops: string, aim: string) =>
    `The shadows stay ${stops} short of ${aim}: a reflector or a second lamp lifts them, more exposure would cost the highlights.`,
  fromCard: 'Lightest and darkest paint are worked out from the gray card that was measured.',
  fromCrop: 'Read from the crop. To go by a gray card instead, measure a spot on it and say so.',

  // beside an earlier shot
  beside: 'Beside an earlier shot',
  keepShot: 'Keep this shot to compare the next with',
  kept: 'This shot is kept. Open the next one and they are compared.',
  openEarlier: 'Choose the earlier shot',
  away: 'Take the earlier shot away',
  edgesTable: 'Cut off in the earlier shot → in this shot',
  sameAs: 'This shot is just as bright as the earlier one',
  shiftedBy: (stops: string, brighter: boolean) => `This shot is ${stops} ${brighter ? 'brighter' : 'darker'} than the earlier one`,
  shiftNear: (measured: string, clicks: string) => `${measured}, nearest to ${clicks}. The files do not say what was meant.`,
  shiftSmall: (measured: string) => `${measured}, less than half a third-stop click. The files do not say what was meant.`,
  shiftMeant: (measured: string, stops: string | undefined) => `${measured}, as ${stops ?? 'the same exposure'} should be.`,
  shiftOff: (measured: string, stops: string | undefined, brighter: boolean) =>
    `${measured}, where the settings say ${stops ? `${stops} ${brighter ? 'brighter' : 'darker'}` : 'no difference'}: the lamps, the lens or the set changed as well.`,
  oneClick: 'one third-stop click',
  otherShape: 'The two shots have different proportions: they are not the same framing and cannot be compared.',
  otherSet: 'The two shots do not show the same set from the same place: there is no one difference in brightness between them.',
  nothingInCommon: 'No part of the crop is free of lost tones in both shots: there is nothing to compare.',
  shiftSpread: (stops: string) => `Measured where neither shot is cut off; two thirds of the picture agree to ±${stops}.`,
  shiftMoved: (share: string) => `${share} of what could be compared moved or changed and was left out.`,
  shiftColour: (colour: 'red' | 'blue', stops: string, stronger: boolean) =>
    `Against green, ${colour} came out ${stops} ${stronger ? 'stronger' : 'weaker'}: the colour of the light or the white balance changed.`,

  sharpness: 'Where is it sharp?',
  looking: 'Looking…',
});

const CARD_MEASURED = 'the gray card that was measured';
const CARD_MEANT = 'a gray card as it should come out';

const AIMS_WHY: Readonly<Record<AimsWhy, string>> = {
  fits: 'This aim is only for a next shot, if there is one.',
  card: 'It looks at even the smallest highlights of this crop; this aim goes by the lightest paint there can be in this light, as the gray card has it.',
  glints: 'It looks at even the smallest highlights of this crop; this aim takes the very brightest for glints and goes by the rest.',
};

export type SheetWords = ReturnType<typeof words>;
