// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/rods/rod_settings.h"

namespace rods {

std::vector<std::string> problemsIn(const RodSettings& settings) {
    std::vector<std::string> problems;
    const auto ask = [&problems](bool isFine, const char* sentence) {
        if (!isFine) {
            problems.emplace_back(sentence);
        }
    };
    const auto isWithin = [](double value, double low, double high) {
        return value >= low && value <= high;
    };
    ask(isWithin(settings.rods, 1, 8), "from 1 to 8 rods");
    ask(isWithin(settings.cast.inMetres(), 5.0, 100.0), "a cast from 5 to 100 m");
    ask(isWithin(settings.nearest.inMetres(), 1.0, 50.0) && settings.nearest < settings.cast,
        "the nearest bait from 1 to 50 m, nearer than the cast");
    ask(isWithin(settings.overDepth.inMetres(), 0.0, 3.0), "an over-depth from 0 to 3 m");
    ask(isWithin(settings.leastAngle_deg, 5.0, 90.0),
        "an angle between lines from 5 to 90 degrees");
    ask(isWithin(settings.leastApart.inMetres(), 0.0, 50.0), "baits from 0 to 50 m apart");
    ask(isWithin(settings.ropeClear_deg, 0.0, 60.0), "lines from 0 to 60 degrees off the ropes");
    ask(isWithin(settings.shallowest.inMetres(), 0.1, 5.0), "baits in no less than 0.1 to 5 m");
    return problems;
}

} // namespace rods
