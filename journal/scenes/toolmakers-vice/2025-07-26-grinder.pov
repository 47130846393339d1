// jpg 1600x1200 blur 62-130 taken "2025:07:26 20:33:57"
#include "shop.inc"
Cam(<-12, 15, -48>, <-2, -3, 0>, 49)
Key(<-20, 80, -45>, rgb <.95,1.0,1.0>, 30) Fill(<-70, 20, -50>, rgb <.12,.10,.08>) Sky(<.12,.12,.12>, <.4,.42,.42>, <1.5,1.55,1.5>)
Wall(80, 1, 9)
#declare T_Grinder = texture { Painted(<.20,.27,.25>) };
object { RB(<-60, -16, -10>, <60, -7, 10>, .6) texture { T_Grinder } } object { RB(<-50, -7, -8.5>, <50, -4, 8.5>, .3) texture { T_Ground } }
object { RB(<-60, -40, -14>, <60, -16, 30>, 1) texture { T_Grinder } }
object { RB(<-21, -4, -7>, <17, -.05, 7>, .2) texture { T_Steel } }
#for (I, 0, 24) box { <-20 + I*1.5, -.1, -6>, <-19.2 + I*1.5, 0, 6> texture { T_Ground } } box { <-19.2 + I*1.5, -.1, -6>, <-18.9 + I*1.5, -.005, 6> texture { T_Brass } } #end
// vice body on the chuck
difference { union { RB(<-6, 0, -2.6>, <7, 2.6, 2.6>, .1) RB(<4, 2, -2.6>, <7, 5.4, 2.6>, .1) } box { <-9, 1.6, -.8>, <3.9, 6, .8> } texture { T_Ground } scale <-1, .92, 1> translate x*-4.4 }
// wheel and guard
#declare WC = <-1.5, 10.6, 0>;
difference { RC(WC - z*1, WC + z*1, 8, .1) cylinder { WC - z*2, WC + z*2, 1.5 } pigment { granite color_map { [0 rgb .28] [1 rgb .46] } scale .5 } normal { granite .4 scale .2 } }
cylinder { WC - z*1.6, WC + z*8, 1.6 texture { T_Steel } } object { Hex(0, 1.2, 1.4) rotate -x*90 translate WC - z*1.4 texture { T_Steel } }
difference { RC(WC - z*2.4, WC + z*3, 9.6, .3) cylinder { WC - z*1.7, WC + z*2.6, 8.8 } box { WC + <-20, -20, -5>, WC + <20, -2.4, 5> } cylinder { WC - z*5, WC - z*1, 7 } texture { T_Grinder } }
object { RB(<-9, 2, 6>, <9, 20, 30>, 1.5) translate <WC.x, 0, 4> texture { T_Grinder } }
object { RB(<-16, -40, 26>, <16, 60, 50>, 2) texture { T_Grinder } }
// handwheels
#for (I, 0, 1) union { torus { 4.2, .6 rotate x*90 texture { T_Polish } } cylinder { -z, z*5, 1.3 texture { T_Steel } } #for (K, 0, 2) cylinder { 0, x*4.2, .5 rotate z*(K*120 + 20) texture { T_Polish } } #end cylinder { <3, 2.9, 0>, <3, 2.9, -3>, .7 texture { T_Knob } } translate <-22 + I*34, -13, -14> } #end
// the extraction hood right of the wheel
difference { RB(<WC.x + 7.5, 3.6, -3>, <WC.x + 13, 12.5, 3>, .5) box { <WC.x + 6, 3, -2.5>, <WC.x + 12.4, 9, 2.5> } texture { T_Grinder } }
#if (!Depth) union { #for (I, 0, 420)
  #local L = 1 + 12*pow(rand(Sd), 1.6); #local A = (rand(Sd) - .25)*14; #local B = (rand(Sd) - .5)*16; #local K = .2 + rand(Sd)*1.3;
  cylinder { x*L, x*(L + K), .035 rotate z*A rotate y*B translate <WC.x + .8, 2.75, 0> pigment { rgb <1, .35 + .5*rand(Sd), .1> } finish { diffuse 0 emission 1 + 2.5*rand(Sd) } } #end no_shadow }
  light_source { <WC.x + 3, 3.4, -2.5> rgb <1.1,.55,.15>*.7 fade_distance 5 fade_power 2 } #end
Mark(<-9, -1, -7>, "35 48 chuck") Mark(WC + <8.6, -1, -2.4>, "66 30 guard")
