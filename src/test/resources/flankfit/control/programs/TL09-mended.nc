; sheet: H2 = { geometry = 120.0 }, H3 = { geometry = 100.0 }
; absent TL09
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
T2 M6
G43 H2 Z50.
M30
