; absent AS06
; sheet: end-reset = "keep"
G21 G90 G17 G54 G40 G49 S1000 M3 F200.
G0 X10. Y5. Z5.
G1 Z-1.
G91 X5.
G0 Z20.
M30
