/**
 * What somebody without a pointer meets in each element at work, in order, as it ought to be: role, name, and after ` = ` what stands
 * in it or where it stands. Several to a line; what is inside a fold follows it, indented. `back` marks what stands before a fold and
 * comes with it, so that it is met only on the way back.
 */
export const STOPS: Readonly<Record<string, string>> = {
  'stop-trade-dial': `
    slider Aperture and shutter, same light = f/11 at 0.6 s
    textbox Start: metered or tried = f/2.8, 1/25 s, ISO 100
    button One click darker | textbox Brighter (+), darker (−) = 0 | button One click brighter
    textbox Aperture = f/11 | textbox Shutter = 0"6 | textbox ISO = 100 | combobox Keeps the light = shutter
    button Start from here | button Back to the start
    fold What changed, and the way there
    fold Limits of lens and body
      combobox Clicks of the dials = 3 | textbox Lens fully open = f/2.8 | textbox Lens fully closed = f/22 | textbox Shortest time = 1/4000 s
      textbox Longest time = 30 s | textbox Base ISO = 100 | textbox Highest ISO you use = 6400`,
  'sharp-zone-bar': `
    slider Focus = 36 mm behind the base’s front edge
    button Blur, pressed | button Contrast, not pressed
    button Move the camera…
    textbox Aperture = f/8 | textbox Focal length = 60 mm | textbox Field width = 187 mm | textbox Base depth = 90 mm | textbox Focus = 36 mm
    fold Figure: what reaches past the base
      textbox Past the front edge = 18 mm | textbox … at a height of = 20 mm | textbox Past the back edge = 26 mm | textbox … at a height of = 45 mm
      textbox Height above the table = 95 mm | textbox Camera looks down by = 7°
    fold Camera: distance, sensor, limits
      textbox Camera to focus = 443.2 mm | textbox Room for the camera = 1500 mm | textbox Shutter = 1/4 s
      combobox Sensor = full-frame | textbox Sensor width = 36 mm | textbox Sensor height = 24 mm | combobox Camera held = wide
      textbox Widest aperture = f/2.8 | textbox Smallest aperture = f/22 | combobox Body shows f-numbers = marked | textbox Pupil ratio of the lens = 1
    fold Finished picture, blur limit, unit
      textbox Finished width, pixels = 1600 | textbox Frame width, pixels = 6000 | textbox Blur limit, finished px = 1.5 | combobox Lengths in = mm
    fold Or several frames, to stack
      button Set f/…
    fold What a step back is worth
      slider Camera back by = 0 mm
    fold Field width, from a photo of a ruler
    fold Your own limit, from a ruler shot
      textbox Graduation at the front edge | textbox Nearest still sharp | textbox Farthest still sharp`,
  'tonal-chart-reader': `
    slider Crop frame = 60% by 81%, 20% from the left, 2% from the top
    back slider Line, end A… | back slider Line, end B…
    file Choose another photo | button Keep it all | button Measure a spot, not pressed
    button 0.3 s → 1/4 s at f/8 1/3 stop darker than this photo. | combobox The picture is meant as = dark-backdrop
    radio Colours = colours
    fold Where is it sharp?
      button Front to back… | button Side to side
      textbox Ruler at A | textbox Ruler at the + halfway | textbox Ruler at B | textbox Base’s front edge
      button Show it over the photo, not pressed
    fold Beside an earlier shot
      button Keep this shot to compare the next with | file Choose the earlier shot
    fold Where the figure’s lights and darks should sit
      textbox Highlights at = 240 | textbox Shadows at least = 12 | textbox Backdrop fills = 50%
    fold Crop by numbers
      textbox Left = 20% | textbox Top = 2% | textbox Width = 60% | textbox Height = 81%`,
  'gray-card-check': `
    slider Frame on the white patch = 59 by 54 px, 60 from the left, 823 from the top
    slider Frame on the gray patch = 54 by 54 px, 184 from the left, 823 from the top
    slider Frame on the black patch = 59 by 54 px, 303 from the left, 823 from the top
    button Show the whole shot
    fold Frames by numbers
      textbox White: left, top, size, px = 60, 823, 59 × 54 | textbox Gray: left, top, size, px = 184, 823, 54 × 54
      textbox Black: left, top, size, px = 303, 823, 59 × 54
    slider Where before ends and after begins = 50% before, 50% after
    button Copy | button Copy | button Copy
    file Choose another card shot`,
  'backdrop-shade': `
    textbox How dark should the backdrop be? = 4.5 | textbox Middle of base to backdrop = 300 mm | combobox Backdrop of = black-card
    button Find a place for a card | button Smallest move that does it
    slider key, from above = 230 mm left, 200 mm in front, 300 mm up | slider fill, from above = 360 mm right, 330 mm in front, 180 mm up
    slider flag, from above = 70 mm right, 200 mm behind, 400 mm up | slider backdrop, from above = 300 mm behind
    slider camera, from above = 377 mm in front, 91 mm up
    slider key, from the side = 230 mm left, 200 mm in front, 300 mm up | slider fill, from the side = 360 mm right, 330 mm in front, 180 mm up
    slider flag, from the side = 70 mm right, 200 mm behind, 400 mm up | slider backdrop, from the side = 300 mm behind
    slider camera, from the side = 377 mm in front, 91 mm up
    fold Lamps, flags, figure and camera: sizes and places, add and take away
      button key, pressed | button fill, not pressed | button flag, not pressed | button camera, not pressed | button figure, not pressed
      textbox Name = key | textbox Power = 0 | textbox Right (+), left (−) = −230 mm | textbox Behind (+), in front (−) = −200 mm
      textbox Above the table = 300 mm | textbox Aimed right (+), left (−) = 0 mm | textbox Aimed behind (+), in front (−) = 0 mm
      textbox Aimed above the table = 45 mm | combobox Face = rectangle | textbox Width = 180 mm | textbox Height = 180 mm
      button + A lamp | button + A window | button + A ceiling lamp | button + A flag | button − Take the key away
    fold Compare with a photo
      textbox Backdrop at its brightest in the photo
    fold Lamps that flicker with the mains
      combobox Mains = 50 | textbox Shutter = 1/4 s
    fold Camera, table top and the set as text
      textbox Figure, side to side = 90 mm | textbox Figure’s height = 95 mm | textbox Base, front to back = 90 mm | textbox Field width = 180 mm
      textbox Focal length = 60 mm | textbox Camera looks down = 7 | textbox Light it throws back = black card | combobox Table top = 0
      textbox The set as text = key 180x180 at -230,-200,300 aim 0,0,45 power 0; fill 420x420 at…`,
  'settings-trail': `
    button Step 3: 0.6 s for 1/6 s seconds, not a fraction, 2 stops brighter
    button Copy the list
    fold Paste a lesson, or change this one
      textbox Running text, or one setting a line = f/2.8, 1/25 s f/5.6, 1/6 s f/11, 1/6 s | button Read it
      combobox Where nothing is said of the light = same-light`,
  'shot-plan': `
    slider Camera, looking down = 7° down | slider Foremost tip = 18 mm past the front edge, 20 mm up
    slider Top of the figure = 95 mm above the table | slider Rearmost tip = 26 mm past the back edge, 45 mm up
    slider Front edge of the base = base 90 mm deep | slider Back edge of the base = base 90 mm deep
    button Further back, cropped (60 mm lens) f/…, not pressed
    button 2 frames, blended (60 mm lens) f/…, not pressed
    button 2 frames, blended (100 mm lens) f/…, not pressed
    fold Side by side
    fold Fine lines at every aperture
    fold What counts how much
    textbox Focal lengths = 60, 100 mm | textbox Tripod room = 1.2 m | textbox Picture width, px = 1600 | textbox Picture height, px = 1067
    textbox Free around it = 8% | textbox Metered aperture = f/8 | textbox Metered shutter = 1/4 s
    fold Figure in numbers
      textbox Base depth = 90 mm | textbox Past the front edge = 18 mm | textbox … at a height of = 20 mm | textbox Past the back edge = 26 mm
      textbox … at a height of = 45 mm | textbox Height above the table = 95 mm | textbox Figure, side to side = 80 mm | textbox Camera looks down by = 7
    fold Camera, lens and limits
      combobox Sensor = full-frame | combobox Camera held = wide | textbox Sensor width = 36 mm | textbox Sensor height = 24 mm
      textbox Frame width as held, px = 6000 | textbox Widest aperture = f/2.8 | textbox Smallest aperture = f/22 | textbox Shortest time = 1/4000 s
      textbox Longest time = 30 s | textbox Closest focus | combobox In close-up the body shows = marked | textbox Rear pupil ÷ front pupil = 1
      textbox Magnification when metered = 0.2
    fold What counts as sharp, frames, unit
      textbox Blur that still looks sharp, px = 1.5 | textbox Contrast the finest line keeps = 0.3 | textbox Frames at most = 12 | combobox Lengths in = mm`,
  'shot-sheet': `
    textbox Name of this shot | textbox Note = The lantern bearer, second evening.
    button Keep this shot | button Remember on this device, not pressed
    fold Link, text, card, file and print
      button Copy link | button Show QR code, folded | combobox Which shot = now
      button Plain text | button Markdown | button BBCode | button HTML | button Save SVG | button Save PNG | button Print on one page
      button Save file | button Copy file as text | file Open a file | textbox or paste its text here | button Add these shots
    fold Put it into a page of your own
      textbox Tag with what is set = <shot-sheet aperture="f/8"… | button Copy
      textbox Script line, once a page = <script type="module"… | button Copy
      textbox In a frame, where frames are taken and scripts are not = <iframe data-lampblack… | button Copy
      textbox Plain text, where nothing else works = f/8, 1/4 s, ISO 100 Camera… | button Copy`,
};
