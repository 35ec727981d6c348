; sheet: long-arc-by-negative-r = "false"
; absent AR14
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G2 X5. R5.
M30
