// SPDX-License-Identifier: GPL-3.0-or-later
// Days made up with their truth: stays are found where and when the boat lay, and nowhere else.
// bench_stays runs a hundred days of each trouble; here are fewer, with the same demands.
#include "core/rates/find_stays.h"
#include "tests/support/track_day.h"

#include <gtest/gtest.h>

#include <string>

namespace {

using support::TrackTrouble;

constexpr int days = 25;

class StaysOfTracks : public testing::TestWithParam<TrackTrouble> {};

TEST_P(StaysOfTracks, AreFoundInTimeAndPlaceAndNoOthers) {
    int stays = 0;
    int found = 0;
    int timed = 0;
    int placed = 0;
    int clean = 0;
    std::string odd;
    for (std::uint64_t seed = 1; seed <= days; ++seed) {
        const support::TrackDay day = support::trackDay(GetParam(), seed);
        base::Progress progress;
        const auto seen = rates::findStays(day.track, {}, progress);
        ASSERT_TRUE(seen.has_value()) << "seed " << seed;
        const support::FoundOfDay one = support::compared(day, GetParam(), *seen);
        stays += one.stays;
        found += one.found;
        timed += one.timed;
        placed += one.placed;
        clean += one.wrong == 0 ? 1 : 0;
        if (one.found < one.stays || one.timed < one.found || one.wrong > 0) {
            odd += " " + std::to_string(seed);
        }
    }
    SCOPED_TRACE("seeds that are not whole:" + odd);
    EXPECT_GE(found, 0.95 * stays);
    EXPECT_GE(timed, 0.95 * stays);
    EXPECT_GE(placed, 0.95 * stays);
    EXPECT_GE(clean, (GetParam() == TrackTrouble::slowDrift ? 0.90 : 0.95) * days);
}

INSTANTIATE_TEST_SUITE_P(OfAllTroubles, StaysOfTracks,
                         testing::ValuesIn(support::allTrackTroubles));

} // namespace
