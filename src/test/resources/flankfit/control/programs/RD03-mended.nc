%
; absent RD03
G21 G90 G54
M30
%
M30
