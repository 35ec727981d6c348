; sheet: tool 4: end mill, diameter 10
; absent TL02
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
T4
M30
