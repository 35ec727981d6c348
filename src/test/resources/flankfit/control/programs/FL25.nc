; expect error FL25 7
; sheet: block-limit = 12
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
M98 P7 L9
M30
O7
G1 X5.
M99
