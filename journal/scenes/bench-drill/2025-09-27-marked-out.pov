// png 1000x1000 blur 34-60 colours 200 taken "2025:09:27 22:31:09"
#include "shop.inc"
Cam(<-5, 21.5, -15>, <-.1, 7.6, .2>, 41)
LampLight()
BenchRoom(34)
object { Head(T_Blue, 0, 0, 0) translate y*5.7 }
#macro Scribe(X, H, R) union { torus { R, .035 } torus { R*.12, .03 } box { <-R*1.75, -.03, -.03>, <R*1.75, .03, .03> } box { <-.03, -.03, -R*1.75>, <.03, .03, R*1.75> } sphere { 0, .1 } #for (I, 0, 3) sphere { <R*cos(I*pi/2), 0, R*sin(I*pi/2)>, .085 } #end texture { T_Bright } rotate y*2 translate <X, H, 0> } #end
object { Scribe(-4.5, 11.4, 1.36) } object { Scribe(4.5, 9.7, 1.64) }
box { <-1.5, 9.28, -.03>, <1.5, 9.32, .03> texture { T_Bright } }
