// png 1000x1000 colours 220 taken "2026:02:21 20:35:20"
#include "shop.inc"
Cam(<1.6, 26, -10>, <1.2, 0, -.5>, 40)
WindowLight()
Bench(-40)
object { RB(<-7, 0, -5.4>, <6.6, 2, 5.8>, .15) texture { T_Cast } }
box { <-6.7, 1.9, -5.1>, <6.3, 2.02, 5.5> texture { pigment { bozo color_map { [0 rgb <.34,.34,.335>] [1 rgb <.44,.435,.42>] } scale 1.2 } normal { bumps .12 scale .3 } Shine(.62, .45, .04, .14) } }
// scraper marks, two ways
#for (I, 0, 620) box { <-.26 - .2*rand(Sd), 2, -.05>, <.26 + .2*rand(Sd), 2.024 + .004*rand(Sd), .05> rotate y*(45 + 90*mod(I, 2) + 14*rand(Sd)) translate <-6.3 + 12.2*rand(Sd), 0, -4.7 + 9.8*rand(Sd)> texture { pigment { rgb .42 + .2*rand(Sd) } Shine(.6, .7, .03, .2) } } #end
// blue spots
#for (I, 0, 33) #local X = -6 + 1.95*mod(I, 7) + (rand(Sd) - .5)*1.2; #local Z = -4.5 + 2.15*floor(I/7) + (rand(Sd) - .5)*1.3;
  #for (K, 0, 3 + floor(4*rand(Sd))) sphere { 0, 1 scale <.12 + .24*rand(Sd), .05, .1 + .2*rand(Sd)> rotate y*rand(Sd)*180 translate <X + (rand(Sd) - .5)*.5, 2.01, Z + (rand(Sd) - .5)*.5> pigment { bozo color_map { [0 rgb <.015,.05,.34>] [1 rgb <.04,.10,.5>] } scale .2 } finish { diffuse .85 specular .2*RF roughness .04 } } #end #end
// the scraper
union { object { RB(<-1, 0, -5>, <1, .28, 6>, .08) texture { T_Dull } } object { RB(<-1.05, .02, 5.4>, <1.05, .24, 6.6>, .1) texture { T_Polish } } cone { <0, .14, -5>, .5, <0, .14, -6.5>, .8 texture { T_Steel } } object { RC(<0, .14, -6.3>, <0, .14, -16>, 1.15, .4) texture { T_Handle } } #for (I, 0, 7) torus { 1.17, .32 rotate x*90 rotate y*7 scale <1, 1, 1.4> translate <0, .14, -8.4 - I*.75> pigment { rgb <.05,.05,.055> } finish { diffuse .8 specular .2*RF roughness .05 } } #end
  rotate <3, -48, 0> translate <4.6, 2.85, -1.2> }
