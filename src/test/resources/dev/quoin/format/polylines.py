# What ezdxf (MIT licence) reads from a DXF file: a line for each polyline: layer, closed, length, bounds.
import math
import sys

import ezdxf

document = ezdxf.readfile(sys.argv[1])
audit = document.audit()
print(document.dxfversion, len(audit.errors), len(audit.fixes))
for line in document.modelspace():
    points = [vertex.dxf.location for vertex in line.vertices]
    ring = points + points[:1] if line.is_closed else points
    length = sum(math.dist(a, b) for a, b in zip(ring, ring[1:]))
    xs = [point.x for point in points]
    ys = [point.y for point in points]
    print(line.dxf.layer, int(line.is_closed), length, min(xs), min(ys), max(xs), max(ys))
