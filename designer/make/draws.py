"""Fixed quasi-random draws: the scrambled Sobol points of `scipy.stats.qmc.Sobol(17, scramble=True, rng=20)`.

Such points are sums without carry of a few whole numbers a column: its first point, then one for each binary digit of
the count in Gray code. Keeping those spares the window the second that scipy.stats takes to load; a test holds them to
scipy's. A new uncertain input needs the table anew, from `Sobol(columns, ...)` with one more.
"""

from __future__ import annotations

from functools import cache
from statistics import NormalDist

import numpy as np
from numpy.typing import NDArray

MOST = 2048
DIGITS = 30


@cache
def normal(members: int) -> NDArray[np.float64]:
    """Standard normal draws (members, columns), always the same; the first of many are the few. At most MOST."""
    table = np.array([[int(word, 16) for word in line.split()] for line in _COLUMNS.split("\n") if line])
    count = np.arange(members)
    gray = count ^ (count >> 1)
    points = np.tile(table[:, 0], (members, 1))
    for digit in range(MOST.bit_length() - 1):
        points ^= np.where((gray >> digit & 1)[:, None], table[:, digit + 1], 0)
    made = np.array([NormalDist().inv_cdf(share) for share in (points / 2**DIGITS).ravel()]).reshape(points.shape)
    made.flags.writeable = False
    return made


_COLUMNS = """
3a88ef65 386ba9e5 13505d98 0a8bc318 0500639e 02c8409b 016f6a6e 008516cb 0069a600 003571b5 001a7a03 000e3a30
3093fd22 2a759e8a 3da9598d 2382e1ba 304c254e 297144ed 3f5722a6 2019fbd1 326bdfb0 2a45de6f 3d8b792c 23b9dc66
0dccfa83 3718e145 21fb4e2c 1c9f246a 33143a32 29089407 1110230e 345785ba 20df005e 1e31271d 30d09fb1 28ddae35
3da1485e 34cf3e28 28f2c1f1 080d11a9 1869e1e4 2718b721 11dad211 3c13c59f 3018bab2 2f3914be 09ff192b 1bb17c48
030f8733 2d820953 1e209bbe 0e15e293 27e4c6d7 3a3a952b 35369714 175c3fb4 2b4fa4e3 197daea0 0c613c8f 23d9c31a
3d2a9a5a 2bc90231 1d34e70e 17bc257c 0c4ba262 350bdb84 0b4993ca 1ac134ad 39e87f9c 3c433dbf 11607694 22a71ab8
06388541 38901076 2f4dbb89 320bf963 28096e26 12048cc6 3e01f74b 0e095b86 252c4d43 36a083a4 0a4cd8f5 049c2afb
3c8b9404 35bb023b 179cea5c 3857c64c 11f12af4 367a7514 0c097391 06a80f96 0f837742 1d0dcd6b 312d8060 03c9489a
309f918f 3b288541 1aa0a99a 329360f6 1f27f15b 0afa59b9 25dbd19a 10e7ccc3 16eeb435 0f59c6ef 1c71e32d 2bc5152c
39a12a80 3989250b 156d8d73 24a36cda 37d02dd1 3d0d5bae 3e1d85c1 3bbeecd7 110ec02e 0e89fc7d 28022e4c 1b96affa
31d0a0ca 3e854a36 18a0642c 33ecde09 06ae7b73 0236afca 16a107e7 3bb71df8 0dca4fa0 1fc32cd4 30f60f57 109542d0
07a8a21b 25a83b5b 15f939e7 0c73c53b 0829b54f 1346c0ab 2a824680 20a29ac1 0e1f74b8 358e20b8 029511d8 3cfd01b2
278c133e 2566145b 328c5649 2933f67a 1022eca5 3b61f78a 26afc0dc 3e365fb5 0b30c850 0352b53d 0c059df3 236f15b2
03b71b85 2bf1f414 383fccb5 1b5c5e86 2e45c891 0ec2bf0e 393a7571 1355b25b 238d906f 35418108 200e96eb 37cdda2d
390189f1 296fd2f7 1070f1b4 0d8efc1d 33e3e0e8 271814dc 1689f6f0 2d1bfe15 2c2a5183 05c25fc7 15507199 18b265a0
1edeed08 2d23b0fe 33b9be17 0add2fe3 3441647b 36b8154b 324e4772 1fd428b6 2cb4d3a1 26584dbd 12de1b49 24ae41a1
094bcd5c 2a932405 1126bfe3 0fd42bc0 3119103d 090a295d 04735b8c 308152ec 1f0e569e 28fafc20 144141d6 299849dc
"""
