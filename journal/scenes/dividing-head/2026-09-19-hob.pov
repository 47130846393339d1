// jpg 1280x960 blur 34-64 taken "2026:09:19 21:41:59"
#include "shop.inc"
Cam(<-6, 14, -18>, <.4, 1.4, .3>, 49)
LampLight()
BenchRoom(64)
object { Cloth(60, 40, <.15,.16,.17>, 14) }
// a coarse thread of trapezoid section; with slots it is a hob
#declare FW = function(x, y, z) { 1.75 + .72*(max(0, min(1, (abs(mod(y/1.25 + x/(2*pi) + 20, 1) - .5) - .13)*6)) - 1) + .72 }
#declare FH = function(x, y, z) { select(mod(x*8/(2*pi) + 40, 1) - .3, 1.6, 1.6, FW(x, y, z)) }

union { object { RadMesh(FH, 6, 192, 150) texture { T_HSS } } cylinder { -y*4.6, y*9, 1.0 texture { T_TurnY } } rotate z*-90 rotate y*18 translate <-3.2, 2.6, -2.2> }
union { object { RadMesh(FW, 6.5, 96, 160) texture { T_Steel } } cylinder { -y*2.4, y*9, .95 texture { T_TurnY } } rotate z*-90 rotate y*-12 translate <-3.4, 2.6, 4.4> }
union { object { RB(<-.5, -.15, 0>, <.5, .15, 9>, .06) texture { T_Dull } } cone { <0, 0, -.2>, .4, <0, 0, -4>, .75 texture { T_Handle } } rotate y*-62 translate <8.2, .7, -4.4> }
