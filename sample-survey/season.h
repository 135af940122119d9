// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "sample-survey/bottom.h"
#include "sample-survey/chance.h"

#include <cstdint>
#include <optional>
#include <string>
#include <vector>

namespace sample {

/// Hidden truth of the fishing: fish landed per 10 rod-hours on a ground, for bait and hour of
/// factor 1.
double hiddenRate(Ground ground);
/// Hidden factor of the local clock hour (0 to 24).
double hiddenHourFactor(double hour);

struct HiddenBait {
    std::string name;
    double factor = 1.0;
};

const std::vector<HiddenBait>& hiddenBaits();

/// Lost runs for each fish landed, on average.
constexpr double hiddenLostPerFish = 0.30;

struct LoggedFish {
    std::int64_t time_s = 0;
    bool landed = true;
    std::optional<Point> at;
    std::string species;
    double weight_kg = 0.0;
    double length_mm = 0.0;
    double baitDepth_m = 0.0;
};

struct LoggedStay {
    int number = 0;
    int trip = 0;
    std::int64_t start_s = 0;
    std::int64_t end_s = 0;
    Point at;
    Ground ground = Ground::open;
    int rods = 0;
    std::string bait;
    double windFrom_deg = 0.0;
    double windSpeed_m_s = 0.0;
    double waterTemperature_c = 0.0;
    std::string note;
    std::vector<LoggedFish> fish;
};

/// Where the house rules allow no boat: the strip before the dam. Closed ring, counter-clockwise.
Line closedWater(const Bottom& bottom);
bool inClosedWater(const Bottom& bottom, Point p);

/// Two autumns and the start of a third.
std::vector<LoggedStay> fishSeasons(const Bottom& bottom, Chance& chance);

/// The log as the table that the program's own log verb reads.
std::string logText(const std::vector<LoggedStay>& stays);

} // namespace sample
