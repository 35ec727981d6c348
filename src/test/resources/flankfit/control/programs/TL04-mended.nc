; sheet: H2 = { geometry = 120.0 }
; absent TL04
G21 G90 G54
T2 M6
G43 H2 Z5.
M30
