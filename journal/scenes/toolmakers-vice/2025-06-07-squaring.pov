// jpg 1600x1200 blur 50-130 taken "2025:06:07 20:52:11"
#include "shop.inc"
Cam(<-19, 17, -33>, <0.2, 1.6, -2.6>, 39)
LampLight()
MillRoom(-7, 1)
Vice(13, 5.75)
box { <-5, -2.2, -4.5>, <-.4, 2.4, 0> texture { T_Mach } }
object { RB(<-.5, -2.2, -4.5>, <5, 2.52, 0>, .08) texture { T_Dull } }
cylinder { <-4.6, .15, -5.12>, <3.6, .15, -5.12>, .62 texture { T_Polish } }
object { FlyCutter(4.2) rotate y*205 translate <2.6, 2.45, -2.2> }
MillHead(<2.6, 10.5, -2.2>)
object { Chips(150, 7, 4, .5, 0, T_ChipSteel, .8) translate <-3, -3.4, -8> }
object { Chips(120, 8, 3, .3, 0, T_ChipSteel, .8) translate <-2, -7, -15> }
