; sheet: reference-point = [0.0, 0.0, 300.0]
; absent OF09
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G91 G28 Z0
M30
