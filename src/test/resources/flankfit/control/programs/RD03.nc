%
; expect warning RD03 1
G21 G90 G54
M30
