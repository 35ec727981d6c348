; expect error FL32 6
; sheet: move-limit = 20
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X0 Y0 Z5.
G91
G81 X5. Z-3. R-4. L9
G90
G80
M30
