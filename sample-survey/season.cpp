// SPDX-License-Identifier: GPL-3.0-or-later
#include "sample-survey/season.h"

#include "sample-survey/text.h"

#include <algorithm>
#include <array>
#include <cmath>
#include <numbers>

namespace sample {

namespace {

constexpr std::array grounds{Ground::open, Ground::streamBed, Ground::hump,
                             Ground::bar,  Ground::shelfEdge, Ground::weedEdge};
constexpr double closedStrip_m = 110.0;

/// How often the angler chooses each ground; it is not how good they are.
double liking(Ground ground) {
    switch (ground) {
    case Ground::open:
        return 0.24;
    case Ground::streamBed:
        return 0.15;
    case Ground::hump:
        return 0.14;
    case Ground::bar:
        return 0.12;
    case Ground::shelfEdge:
        return 0.17;
    case Ground::weedEdge:
        break;
    }
    return 0.18;
}

/// The angler's favourite marks on each ground.
std::vector<std::vector<Point>> favouriteMarks(const Bottom& bottom, Chance& chance) {
    std::vector<std::vector<Point>> marks(grounds.size());
    constexpr std::size_t wanted = 6;
    while (std::any_of(marks.begin(), marks.end(),
                       [](const auto& some) { return some.size() < wanted; })) {
        const Point p{chance.between(-1200.0, 1000.0), chance.between(-560.0, 780.0)};
        const double depth = bottom.depth_m(p);
        if (depth < 2.2 || depth > 17.0 || bottom.shore().distance_m(p) < 22.0 ||
            inClosedWater(bottom, p)) {
            continue;
        }
        const Ground ground = bottom.groundAt(p);
        const auto at = static_cast<std::size_t>(std::find(grounds.begin(), grounds.end(), ground) -
                                                 grounds.begin());
        const bool apart = std::all_of(marks[at].begin(), marks[at].end(),
                                       [p](Point other) { return distance(p, other) > 30.0; });
        if (marks[at].size() < wanted && apart) {
            marks[at].push_back(p);
        }
    }
    return marks;
}

/// Local clock hour of sunset to a few minutes: declination by the day of the year, sun 0.833
/// degrees down.
double sunsetHour(std::int64_t midnight_s) {
    constexpr double rad = std::numbers::pi / 180.0;
    const Civil c = civil(midnight_s);
    const auto dayOfYear =
        1.0 + static_cast<double>(midnight_s - secondsOf(c.year, 1, 1, 0, 0)) / 86400.0;
    const double declination =
        -23.44 * rad * std::cos(2.0 * std::numbers::pi * (dayOfYear + 10.0) / 365.25);
    const double lat = 55.2 * rad;
    const double cosine = (std::sin(-0.833 * rad) - std::sin(lat) * std::sin(declination)) /
                          (std::cos(lat) * std::cos(declination));
    const double b = 2.0 * std::numbers::pi * (dayOfYear - 81.0) / 364.0;
    const double equation_min = 9.87 * std::sin(2.0 * b) - 7.53 * std::cos(b) - 1.5 * std::sin(b);
    const double noonUtc = 12.0 - 3.1 / 15.0 - equation_min / 60.0;
    return noonUtc + std::acos(cosine) / rad / 15.0 +
           static_cast<double>(britishOffset_s(midnight_s + day_s / 2)) / 3600.0;
}

std::vector<std::int64_t> tripDays(Chance& chance) {
    std::vector<std::int64_t> days;
    const auto season = [&](int year, int lastMonth, int lastDay, std::size_t count) {
        std::vector<std::int64_t> chosen;
        const std::int64_t first = secondsOf(year, 9, 16, 0, 0);
        const std::int64_t last = secondsOf(year, lastMonth, lastDay, 0, 0);
        while (chosen.size() < count) {
            const std::int64_t day =
                first + day_s * chance.whole(0, static_cast<int>((last - first) / day_s));
            const int weekday = civil(day).weekday;
            const bool suits = weekday == 0 || weekday == 6 || weekday == 3;
            if (suits && std::find(chosen.begin(), chosen.end(), day) == chosen.end()) {
                chosen.push_back(day);
            }
        }
        std::sort(chosen.begin(), chosen.end());
        days.insert(days.end(), chosen.begin(), chosen.end());
    };
    season(2024, 11, 27, 14);
    season(2025, 11, 26, 14);
    season(2026, 11, 15, 5);
    return days;
}

void chooseSpecies(LoggedFish& fish, Ground ground, Chance& chance) {
    const double trout = ground == Ground::open ? 0.35 : 0.10;
    const double perch = ground == Ground::bar || ground == Ground::hump ? 0.40 : 0.22;
    const double draw = chance.share();
    double heavy_kg = 0.0;
    double spread = 0.0;
    double fullness_kg_m3 = 0.0;
    if (draw < trout) {
        fish.species = "trout";
        heavy_kg = 0.95;
        spread = 0.32;
        fullness_kg_m3 = 11.0;
    } else if (draw < trout + perch) {
        fish.species = "perch";
        heavy_kg = 0.52;
        spread = 0.45;
        fullness_kg_m3 = 14.5;
    } else {
        fish.species = "pike";
        heavy_kg = 3.3;
        spread = 0.52;
        fullness_kg_m3 = 7.3;
    }
    fish.weight_kg = heavy_kg * std::exp(spread * chance.normal());
    const double length_m =
        std::cbrt(fish.weight_kg / (fullness_kg_m3 * (1.0 + 0.06 * chance.normal())));
    fish.length_mm = 5.0 * std::round(length_m * 200.0);
}

double localHour(std::int64_t utc_s) {
    const Civil c = civil(utc_s + britishOffset_s(utc_s));
    return c.hour + c.minute / 60.0 + c.second / 3600.0;
}

/// Fish and lost runs of one stay, minute by minute, from the hidden rates.
void fishStay(LoggedStay& stay, double baitFactor, const Bottom& bottom, Chance& chance) {
    const double depth_m = bottom.depth_m(stay.at);
    for (std::int64_t t = stay.start_s + 60; t < stay.end_s; t += 60) {
        const double perHour = hiddenRate(stay.ground) / 10.0 * stay.rods * baitFactor *
                               hiddenHourFactor(localHour(t));
        for (const bool landed : {true, false}) {
            const int count = chance.poisson(perHour / 60.0 * (landed ? 1.0 : hiddenLostPerFish));
            for (int n = 0; n < count; ++n) {
                LoggedFish fish;
                fish.time_s = t;
                fish.landed = landed;
                const double turn = chance.between(0.0, 2.0 * std::numbers::pi);
                const double far_m = chance.between(6.0, 26.0);
                const Point at = stay.at + Point{far_m * std::sin(turn), far_m * std::cos(turn)};
                if (chance.happens(0.6) && bottom.depth_m(at) > 1.0) {
                    fish.at = at;
                }
                fish.baitDepth_m = std::max(0.6, (fish.at ? bottom.depth_m(at) : depth_m) -
                                                     chance.between(0.0, 0.8));
                if (landed) {
                    chooseSpecies(fish, stay.ground, chance);
                }
                stay.fish.push_back(fish);
            }
        }
    }
}

std::string notePerhaps(Chance& chance) {
    static const std::array<std::string, 6> notes{
        "wind got up; moved",       "jacks following; none would take",
        "grebes working bait fish", "rope slipped once; reset",
        "water very clear",         "showers"};
    return chance.happens(0.12) ? notes[static_cast<std::size_t>(chance.whole(0, 5))] : "";
}

} // namespace

double hiddenRate(Ground ground) {
    switch (ground) {
    case Ground::open:
        return 0.4;
    case Ground::streamBed:
        return 0.9;
    case Ground::hump:
        return 1.6;
    case Ground::bar:
        return 2.2;
    case Ground::shelfEdge:
        return 2.6;
    case Ground::weedEdge:
        break;
    }
    return 1.8;
}

double hiddenHourFactor(double hour) {
    if (hour < 9.0) {
        return 1.6;
    }
    if (hour < 11.0) {
        return 1.0;
    }
    if (hour < 14.0) {
        return 0.5;
    }
    return hour < 16.0 ? 1.1 : 1.9;
}

const std::vector<HiddenBait>& hiddenBaits() {
    static const std::vector<HiddenBait> baits{
        {"roach", 1.0}, {"smelt", 1.35}, {"mackerel", 0.75}, {"lamprey", 1.0}};
    return baits;
}

Line closedWater(const Bottom& bottom) {
    // Behind the wall's foot on the land side, so that the strip reaches the shore everywhere.
    const Point south = bottom.shore().dam().front();
    const Point north = bottom.shore().dam().back();
    const double length = distance(south, north);
    const Point along = (1.0 / length) * (north - south);
    const Point out{along.y_m, -along.x_m};
    const Point a = south - 40.0 * along;
    const Point b = north + 40.0 * along;
    return {a - closedStrip_m * out, a + 15.0 * out, b + 15.0 * out, b - closedStrip_m * out,
            a - closedStrip_m * out};
}

bool inClosedWater(const Bottom& bottom, Point p) {
    return distanceToLine(p, bottom.shore().dam()) < closedStrip_m + 10.0;
}

std::vector<LoggedStay> fishSeasons(const Bottom& bottom, Chance& chance) {
    const auto marks = favouriteMarks(bottom, chance);
    std::vector<LoggedStay> stays;
    int trip = 0;
    for (const std::int64_t day : tripDays(chance)) {
        ++trip;
        const std::int64_t offset_s = britishOffset_s(day + day_s / 2);
        const double leave = std::min(sunsetHour(day) + 0.2, 18.6);
        std::int64_t now = day - offset_s + minute_s * chance.whole(425, 510);
        const double season =
            static_cast<double>(day - secondsOf(civil(day).year, 9, 15, 0, 0)) / 86400.0;
        double wind_deg = chance.between(0.0, 1.0) < 0.6 ? chance.between(190.0, 290.0)
                                                         : chance.between(0.0, 360.0);
        const double breeze_m_s = 2.0 + chance.between(0.0, 3.0);
        const double gust = chance.share();
        double wind_m_s = breeze_m_s + 5.0 * gust * gust;
        const int rods = chance.happens(0.5) ? 3 : (chance.happens(0.7) ? 2 : 1);
        const int most = chance.whole(3, 5);
        for (int n = 0; n < most; ++n) {
            LoggedStay stay;
            stay.number = static_cast<int>(stays.size()) + 1;
            stay.trip = trip;
            double draw = chance.share();
            std::size_t ground = 0;
            while (ground + 1 < grounds.size() && draw > liking(grounds[ground])) {
                draw -= liking(grounds[ground]);
                ++ground;
            }
            stay.ground = grounds[ground];
            const Point mark = marks[ground][static_cast<std::size_t>(chance.whole(0, 5))];
            do {
                stay.at = mark + Point{5.0 * chance.normal(), 5.0 * chance.normal()};
            } while (bottom.groundAt(stay.at) != stay.ground);
            stay.start_s = now;
            stay.end_s = now + minute_s * chance.whole(55, 140);
            if (localHour(stay.end_s) > leave) {
                stay.end_s = day - offset_s + minute_s * static_cast<std::int64_t>(leave * 60.0);
            }
            if (stay.end_s - stay.start_s < 1500) {
                break;
            }
            stay.rods = rods;
            const HiddenBait& bait = hiddenBaits()[static_cast<std::size_t>(chance.whole(0, 3))];
            stay.bait = bait.name;
            wind_deg = std::fmod(wind_deg + 12.0 * chance.normal() + 360.0, 360.0);
            wind_m_s = std::max(0.5, wind_m_s + 0.7 * chance.normal());
            stay.windFrom_deg = std::fmod(10.0 * std::round(wind_deg / 10.0), 360.0);
            stay.windSpeed_m_s = wind_m_s;
            stay.waterTemperature_c = 16.6 - 0.135 * season + 0.3 * chance.normal();
            stay.note = notePerhaps(chance);
            fishStay(stay, bait.factor, bottom, chance);
            stays.push_back(stay);
            now = stay.end_s + minute_s * chance.whole(11, 26);
        }
    }
    return stays;
}

std::string logText(const std::vector<LoggedStay>& stays) {
    std::string text = "kind,stay,start,end,time,lon,lat,rods,bait,species,weight_kg,length_mm,"
                       "bait_depth_m,wind_from_deg,"
                       "wind_speed_m_s,water_temperature_c,note\n";
    for (const LoggedStay& stay : stays) {
        const std::string number = std::to_string(stay.number);
        text += "stay," + number + "," + isoBritish(stay.start_s) + "," + isoBritish(stay.end_s) +
                ",," + lonLatCells(stay.at) + "," + std::to_string(stay.rods) + "," + stay.bait +
                ",,,,," + fixed(stay.windFrom_deg, 0) + "," + fixed(stay.windSpeed_m_s, 1) + "," +
                fixed(stay.waterTemperature_c, 1) + "," + stay.note + "\n";
        for (const LoggedFish& fish : stay.fish) {
            text +=
                std::string(fish.landed ? "fish," : "run,") + number + ",,," +
                isoBritish(fish.time_s) + "," + (fish.at ? lonLatCells(*fish.at) : ",") + ",," +
                stay.bait + "," + fish.species + "," +
                (fish.landed ? fixed(fish.weight_kg, 2) + "," + fixed(fish.length_mm, 0) : ",") +
                "," + fixed(fish.baitDepth_m, 1) + ",,,,\n";
        }
    }
    return text;
}

} // namespace sample
