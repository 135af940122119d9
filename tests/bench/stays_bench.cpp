// SPDX-License-Identifier: GPL-3.0-or-later
// A hundred made-up days of each trouble: how many stays are found, how well timed and placed, and
// how many days have none that was not there. Prints one line a trouble.
#include "core/rates/find_stays.h"
#include "tests/support/track_day.h"

#include <algorithm>
#include <array>
#include <chrono>
#include <cstdlib>

#include <fmt/format.h>

namespace {

constexpr std::array names{"swing", "gaps", "trolling", "slow drift", "8 m noise"};

void tell(support::TrackTrouble trouble, int days) {
    support::FoundOfDay sum;
    int clean = 0;
    double worst_s = 0.0;
    std::string odd;
    for (int seed = 1; seed <= days; ++seed) {
        const support::TrackDay day = support::trackDay(trouble, static_cast<std::uint64_t>(seed));
        base::Progress progress;
        const auto begun = std::chrono::steady_clock::now();
        const auto found = rates::findStays(day.track, {}, progress);
        const std::chrono::duration<double> took = std::chrono::steady_clock::now() - begun;
        worst_s = std::max(worst_s, took.count());
        if (!found) {
            continue;
        }
        const support::FoundOfDay one = support::compared(day, trouble, *found);
        sum.stays += one.stays;
        sum.found += one.found;
        sum.timed += one.timed;
        sum.placed += one.placed;
        clean += one.wrong == 0 ? 1 : 0;
        sum.worstTime_min = std::max(sum.worstTime_min, one.worstTime_min);
        sum.worstPlace_m = std::max(sum.worstPlace_m, one.worstPlace_m);
        if (one.found < one.stays || one.timed < one.found || one.wrong > 0) {
            odd +=
                fmt::format(" {}({}/{} t{} w{})", seed, one.found, one.stays, one.timed, one.wrong);
        }
    }
    fmt::print("{:<11} stays {:4}, found {:5.1f} %, times {:5.1f} % (worst {:.1f} min), places "
               "{:5.1f} % (worst {:.1f} m), clean days {:5.1f} %, slowest {:.0f} ms\n",
               names[static_cast<std::size_t>(trouble)], sum.stays, 100.0 * sum.found / sum.stays,
               100.0 * sum.timed / sum.stays, sum.worstTime_min, 100.0 * sum.placed / sum.stays,
               sum.worstPlace_m, 100.0 * clean / days, 1000.0 * worst_s);
    if (std::getenv("MEREMARK_BENCH_SEEDS") != nullptr) {
        fmt::print("   {}\n", odd);
    }
}

} // namespace

int main(int count, char** arguments) {
    const int days = count > 1 ? std::atoi(arguments[1]) : 100;
    for (const support::TrackTrouble trouble : support::allTrackTroubles) {
        tell(trouble, days);
    }
    return EXIT_SUCCESS;
}
