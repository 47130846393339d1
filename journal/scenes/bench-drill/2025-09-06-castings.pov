// jpg 1600x1200 blur 72-140 taken "2025:09:06 20:11:40"
#include "shop.inc"
Cam(<-20, 27, -47>, <.2, 4.2, .6>, 46)
LampLight()
BenchRoom(21)
BenchLamp(<-44, 26, 38>)
object { RB(<-25, 0, -15>, <25, 4, 17>, .4) pigment { granite color_map { [0 rgb .09] [.5 rgb .15] [1 rgb .24] } scale 1.2 } normal { bumps .03 scale .1 } finish { diffuse .75 specular .4*RF roughness .03 reflection { .01*RF, .15*RF } } }
object { BaseCasting(T_Cast) scale .9 rotate y*62 translate <-9, 4, 5> }
object { Head(T_Cast, 0, 0, 0) rotate y*-12 translate <11, 9.8, 5> }
object { TableDisc(T_Cast, T_Cast) rotate <180, 0, 0> scale .8 translate <3.2, 4, -5.5> }
object { ArmCasting(T_Cast) scale .8 rotate y*205 translate <13.4, 6, -7.6> }
object { RB(<-5.5, 0, -3.5>, <5.5, .9, 3.5>, .15) pigment { bozo turbulence .6 color_map { [0 rgb <.14,.13,.12>] [.55 rgb <.2,.16,.12>] [1 rgb <.27,.12,.05>] } scale 2.5 } normal { granite .2 scale 2 } finish { diffuse .8 specular .15*RF roughness .06 } rotate y*-14 translate <-12.5, 4, -8.8> }
cylinder { <-14, 5, -13.6>, <13, 5, -13.2>, 1 texture { T_Polish } }
union { #for (I, 0, 4) cylinder { <-1.5 + I*.6, 1 + .2*I, -4>, <-1.2 + I*.5, 1.2 + mod(I, 2)*.8, 3>, .5 + .15*mod(I, 3) texture { T_Steel } } #end sphere { 0, 3 scale <1.3, .8, 1.1> translate y*1.8 texture { pigment { rgb <.42,.30,.17> } normal { wrinkles 1.2 scale 1.2 } finish { diffuse .85 } } } rotate y*-30 translate <-21.5, 4, 0> }
