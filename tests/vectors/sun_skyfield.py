"""Writes sun_skyfield.csv: noon, sunrise and sunset of local days, by skyfield with DE421.

    pip install skyfield skyfield-data tzdata
    python3 tests/vectors/sun_skyfield.py

Noon is the passage of the local day by the zone's clock; sunrise and sunset are those within half a day of it, for the
upper edge of the disk with 34' of refraction and 16' of radius (0.8333 degrees). A row is left out where the sun comes
within a quarter of a degree of turning at the horizon, at noon or at midnight: there seconds mean nothing. The elevation
is without refraction, at the given instant.
"""

import csv
import pathlib
from datetime import date, datetime, timedelta, timezone
from zoneinfo import ZoneInfo

import skyfield
from skyfield import almanac
from skyfield.api import load_file, wgs84, load
from skyfield_data import get_skyfield_data_path

HORIZON = -0.8333

# Name, degrees north, degrees east, zone.
PLACES = [
    ("equator", 0.0, 32.5, "Africa/Kampala"),
    ("tropic north", 14.7, -17.4, "Africa/Dakar"),
    ("tropic south", -12.4, 130.8, "Australia/Darwin"),
    ("island west of the line", -18.1, 178.4, "Pacific/Fiji"),
    ("island east of the line", -14.3, -170.7, "Pacific/Pago_Pago"),
    ("island a day ahead", 1.9, -157.4, "Pacific/Kiritimati"),
    ("island at 12:45", -44.0, -176.5, "Pacific/Chatham"),
    ("Aleutians", 51.9, -176.6, "America/Adak"),
    ("Kamchatka", 53.0, 158.6, "Asia/Kamchatka"),
    ("Anadyr", 64.7, 177.5, "Asia/Anadyr"),
    ("Ireland", 53.3, -8.0, "Europe/Dublin"),
    ("East Anglia", 52.4, 1.0, "Europe/London"),
    ("Galicia, far ahead of its sun", 42.9, -8.5, "Europe/Madrid"),
    ("Xinjiang, farthest ahead", 39.5, 76.0, "Asia/Shanghai"),
    ("Minnesota", 45.0, -93.2, "America/Chicago"),
    ("Newfoundland", 47.5, -52.8, "America/St_Johns"),
    ("Kentucky", 38.0, -84.5, "America/New_York"),
    ("Nepal", 27.7, 85.3, "Asia/Kathmandu"),
    ("Hokkaido, behind its sun", 43.3, 145.6, "Asia/Tokyo"),
    ("Victoria", -37.8, 145.0, "Australia/Melbourne"),
    ("Lord Howe", -31.5, 159.1, "Australia/Lord_Howe"),
    ("Waikato", -37.8, 175.3, "Pacific/Auckland"),
    ("Southland", -46.4, 168.3, "Pacific/Auckland"),
    ("Cape", -33.9, 18.5, "Africa/Johannesburg"),
    ("Patagonia", -53.2, -70.9, "America/Punta_Arenas"),
    ("Iceland", 64.1, -21.9, "Atlantic/Reykjavik"),
    ("Shetland", 60.4, -1.2, "Europe/London"),
    ("Alaska", 64.8, -147.7, "America/Anchorage"),
    ("Troms", 69.6, 19.0, "Europe/Oslo"),
    ("Svalbard", 78.2, 15.6, "Arctic/Longyearbyen"),
    ("Antarctic coast", -68.6, 78.0, "Antarctica/Davis"),
]
DAYS = [
    date(2026, 1, 15), date(2026, 3, 8), date(2026, 3, 29), date(2026, 5, 16), date(2026, 6, 21),
    date(2026, 8, 2), date(2026, 9, 23), date(2026, 10, 25), date(2026, 12, 21), date(2031, 4, 5),
]

eph = load_file(get_skyfield_data_path() + "/de421.bsp")
ts = load.timescale(builtin=True)
earth, sun = eph["earth"], eph["sun"]


def ms(t):
    return round(t.utc_datetime().timestamp() * 1000)


def elevation(at, t):
    return (earth + at).at(t).observe(sun).apparent().altaz()[0].degrees


rows, left_out = [], 0
for name, north, east, zone_name in PLACES:
    zone = ZoneInfo(zone_name)
    at = wgs84.latlon(north, east)
    for day in DAYS:
        start = datetime(day.year, day.month, day.day, tzinfo=zone).astimezone(timezone.utc)
        following = day + timedelta(days=1)
        end = datetime(following.year, following.month, following.day, tzinfo=zone).astimezone(timezone.utc)
        noons = almanac.find_transits(earth + at, sun, ts.from_datetime(start), ts.from_datetime(end))
        assert len(noons) == 1, (name, day)
        noon = noons[0]
        half = timedelta(hours=12)
        before = ts.from_datetime(noon.utc_datetime() - half)
        after = ts.from_datetime(noon.utc_datetime() + half)
        turning = [elevation(at, t) - HORIZON for t in (noon, before, after)]
        if min(abs(x) for x in turning) < 0.25:
            left_out += 1
            continue
        def up(t):
            return elevation(at, t) > HORIZON

        up.step_days = 0.02
        times, states = almanac.find_discrete(before, after, up)
        rise = [t for t, state in zip(times, states) if state and t.tt < noon.tt]
        set_ = [t for t, state in zip(times, states) if not state and t.tt > noon.tt]
        assert len(rise) < 2 and len(set_) < 2
        if rise and set_:
            what = "rises"
        else:
            what = "never_sets" if turning[0] > 0 else "never_rises"
        midnight = int(start.timestamp() * 1000)
        offsets = [int(t.astimezone(zone).utcoffset().total_seconds() // 60) for t in (start, end)]
        change = midnight
        if offsets[0] != offsets[1]:
            low, high = start, end
            while high - low > timedelta(seconds=1):
                middle = low + (high - low) / 2
                same = int(middle.astimezone(zone).utcoffset().total_seconds() // 60) == offsets[0]
                low, high = (middle, high) if same else (low, middle)
            change = round(high.timestamp() / 60) * 60_000
        look = ts.from_datetime(start + timedelta(hours=9, minutes=17))
        rows.append([
            name, north, east, zone_name, day.isoformat(), offsets[0], change, offsets[1], what,
            ms(rise[0]) if what == "rises" else "", ms(noon), ms(set_[0]) if what == "rises" else "",
            ms(look), f"{elevation(at, look):.5f}",
        ])

out = pathlib.Path(__file__).with_suffix(".csv")
with out.open("w", newline="") as file:
    file.write(f"# skyfield {'.'.join(map(str, skyfield.VERSION))}, DE421, written by sun_skyfield.py\n")
    writer = csv.writer(file, lineterminator="\n")
    writer.writerow(
        "name north east zone day offset change then what sunrise noon sunset at elevation".split()
    )
    writer.writerows(rows)
kinds = {kind: sum(row[8] == kind for row in rows) for kind in ("rises", "never_sets", "never_rises")}
print(f"{len(rows)} place-days to {out}, {left_out} left out, {kinds}")
