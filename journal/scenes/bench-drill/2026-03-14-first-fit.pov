// jpg 1200x1600 blur 78-160 turn 8 taken "2026:03:14 21:12:07"
#include "shop.inc"
Cam(<30, 36, -64>, <0, 27, 1>, 41)
LampLight()
BenchRoom(56) BenchLamp(<-38, 50, 40>)
object { BenchDrill(T_Cast, 15, 0) rotate y*12 }
object { Cloth(16, 12, <.42,.40,.36>, 8) scale <1, 1.5, 1> rotate y*30 translate <-19, .1, -6> }
object { Spanner(16) rotate x*90 rotate y*60 translate <14, 1, -16> }
