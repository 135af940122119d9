// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/propose_settings.h"

#include "core/marks/winds_of_day.h"

namespace marks {

namespace {

/// What stands on a slip of a key is not of a lake.
constexpr double coldest_c = -3.0;
constexpr double hottest_c = 50.0;

bool isWithin(double value, double low, double high) {
    return value >= low && value <= high;
}

} // namespace

std::vector<std::string> problemsIn(const ProposeSettings& settings, const Plan& plan) {
    std::vector<std::string> problems;
    const auto ask = [&problems](bool isFine, const char* sentence) {
        if (!isFine) {
            problems.emplace_back(sentence);
        }
    };
    ask(isWithin(plan.count, 1, 40), "from 1 to 40 marks");
    ask(isWithin(plan.tackle.cast.inMetres(), 5.0, 100.0), "a cast from 5 to 100 m");
    ask(isWithin(plan.tackle.boatLength.inMetres(), 2.0, 15.0), "a boat from 2 to 15 m long");
    for (const WindOfHours& part : windsOf(plan.day)) {
        ask(isWithin(part.wind.speed.value_or(units::Speed()).inMetresPerSecond(), 0.0, 60.0),
            "a wind from 0 to 60 m/s");
    }
    ask(!plan.day.waterTemperature ||
            isWithin(plan.day.waterTemperature->inCelsius(), coldest_c, hottest_c),
        "water from -3 to 50 degrees Celsius");
    ask(isWithin(settings.most, 1, 5000), "from 1 to 5000 candidates");
    ask(isWithin(settings.mostInVain, 1, 1'000'000), "from 1 to 1 million places tried in vain");
    ask(isWithin(settings.mostLookedAt, 100, 1'000'000), "from 100 to 1 million places looked at");
    ask(isWithin(settings.leastApart, 0.1, 4.0), "candidates from 0.1 to 4 casts apart");
    ask(isWithin(settings.shallowest.inMetres(), 0.3, 5.0), "a least depth from 0.3 to 5 m");
    ask(isWithin(settings.swingRoom, 0.0, 5.0), "room from 0 to 5 boat lengths");
    ask(isWithin(settings.roughest.inMetres(), 0.05, 5.0), "roughest waves from 0.05 to 5 m");
    ask(isWithin(settings.steepest, 0.1, 3.0), "a steepest bottom from 0.1 to 3");
    ask(isWithin(settings.steep, 0.02, 3.0), "a steep bottom from 0.02 to 3");
    ask(isWithin(plan.tryNew, 0.0, 1.0), "from 0, what is known, to 1, new water");
    return problems;
}

base::Result<void> checkSettings(const ProposeSettings& settings, const Plan& plan) {
    if (const auto problems = problemsIn(settings, plan); !problems.empty()) {
        return base::fail(base::ErrorKind::wrongUse, "marks cannot be proposed so", "plan",
                          "choose " + problems.front());
    }
    return {};
}

} // namespace marks
