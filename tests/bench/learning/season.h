// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "tests/bench/learning/world.h"

#include <string>
#include <vector>

namespace learning_bench {

/// Who chooses the four marks of a trip.
enum class Angler {
    plan,      ///< water::planDay with the log so far, as the desk does.
    bestSoFar, ///< The places that gave most a rod-hour.
    random,
};

/// What the plan said of one mark, and what was true.
struct Said {
    double expected = 0.0; ///< Fish per 10 rod-hours.
    double low = 0.0;
    double high = 0.0;
    double truth = 0.0;
};

struct Trip {
    double take = 0.0;   ///< Of the angler, in true rate times the hour's.
    double oracle = 0.0; ///< Of one who knows all.
    std::vector<Said> said;
};

struct Season {
    std::vector<Trip> trips;
    double planSeconds = 0.0; ///< CPU, all plans together.
    std::string failure;      ///< Empty where all went well.
};

/// Sixty trips, or as many as said, of four stays each.
[[nodiscard]] Season fish(const TruthWater& water, const World& world, Angler angler,
                          std::uint32_t seed, int trips);

} // namespace learning_bench
