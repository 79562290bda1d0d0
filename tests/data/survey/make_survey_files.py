"""Makes the workbooks, GeoJSON and GeoPackage files of this folder with other people's programs.

The road of the tests: 3,000 ft (914.4 m) along a straight line in EPSG:32632 from (500000, 5300000), heading 30 degrees north of east, two
lanes of 12 ft even about the line. Lane 1 lies to the left.
"""
import datetime
import json
import math
import os
import subprocess

from openpyxl import Workbook

HERE = os.path.dirname(os.path.abspath(__file__))
HEADING = math.radians(30)


def at(along, right):
    """Plane coordinates of a place along the road and to the right of its line."""
    return [
        round(500000 + along * math.cos(HEADING) + right * math.sin(HEADING), 4),
        round(5300000 + along * math.sin(HEADING) - right * math.cos(HEADING), 4),
    ]


def workbook():
    book = Workbook()
    cover = book.active
    cover.title = "Cover"
    cover["A1"] = "Survey of Harrow Road"
    cover["A3"] = "Crew"
    cover["B3"] = "two"
    sheet = book.create_sheet("Survey 2026")
    sheet.append(["Harrow Road, lanes 1 and 2"])
    sheet.append([])
    sheet.append(["ID", "Lane", "Distress", "Sev.", "Station", "Width (in)", "Depth %", "Survey date", "Remarks"])
    rows = [
        [1, 1, "Transverse cracking", "H", "101+00", 0.25, 0.4, datetime.date(2026, 3, 1), "real date"],
        [2, 2, 3, "M", 10150, "1/4 in", "40 %", 46082, "code, plain station and date serial"],
        [3, 2, "Corner break", "L", "102+00", "#DIV/0!", None, datetime.datetime(2026, 3, 1, 22, 15), "formula error"],
        [4, 1, "#REF!", "L", "103+00", None, None, None, "formula error in the type"],
        ["Total", None, None, None, None, 0.5, None, None, None],
    ]
    for row in rows:
        sheet.append(row)
    sheet["G4"].number_format = "0%"
    book.save(os.path.join(HERE, "survey.xlsx"))
    cores = Workbook()
    cores.active.append(["Core", "Lane", "Station", "Thickness (mm)", "Depth (mm)", "Widening below (mm)"])
    cores.active.append(["K1", 1, "101+50", 250, 120, 200])
    cores.save(os.path.join(HERE, "cores.xlsx"))


def features():
    def feature(shape, points, **properties):
        coordinates = points[0] if shape == "Point" else points
        return {"type": "Feature", "properties": properties, "geometry": {"type": shape, "coordinates": coordinates}}

    return [
        feature("Point", [at(100, 1.0)], distress="TC", severity="H", width_in=0.25, surveyed="2026-03-01", note="lane 2"),
        feature("Point", [at(200, -1.0)], distress="Corner break", severity="M", width_in=None, surveyed="2026-03-01", note="lane 1"),
        feature("LineString", [at(300, 2.0), at(303, 2.2), at(306, 2.0)], distress="LC", severity="L", width_in=0.1, surveyed="2026-03-01", note="lane 2"),
        feature("Point", [at(400, 30.0)], distress="TC", severity="H", width_in=0.2, surveyed="2026-03-01", note="far off the road"),
        feature("Point", [at(950, 1.0)], distress="TC", severity="H", width_in=0.2, surveyed="2026-03-01", note="past the end"),
    ]


def gdal():
    source = os.path.join(HERE, "source.geojson")
    with open(source, "w") as file:
        json.dump({"type": "FeatureCollection", "features": features()}, file)

    def run(target, *options):
        path = os.path.join(HERE, target)
        if os.path.exists(path):
            os.remove(path)
        subprocess.run(["ogr2ogr", *options, path, source], check=True)

    run("points.geojson", "-a_srs", "EPSG:32632", "-lco", "COORDINATE_PRECISION=4")
    run("points_wgs84.geojson", "-s_srs", "EPSG:32632", "-t_srs", "EPSG:4326", "-lco", "RFC7946=YES", "-lco", "COORDINATE_PRECISION=9")
    run("survey.gpkg", "-a_srs", "EPSG:32632", "-nln", "distresses", "-nlt", "GEOMETRY")
    os.remove(source)


workbook()
gdal()
