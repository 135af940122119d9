// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/geo/segment_bins.h"

#include <algorithm>
#include <optional>
#include <random>

#include <gtest/gtest.h>

namespace {

using geo::SegmentBins;
using geo::WaterPoint;

/// Along the ray to where it meets the piece; nothing where it does not.
std::optional<double> meets_m(WaterPoint p, double east, double north,
                              const SegmentBins::Piece& piece) {
    const double x = piece.b.x_m - piece.a.x_m;
    const double y = piece.b.y_m - piece.a.y_m;
    const double cross = east * y - north * x;
    if (cross == 0.0) {
        return std::nullopt;
    }
    const double fromX = piece.a.x_m - p.x_m;
    const double fromY = piece.a.y_m - p.y_m;
    const double along = (fromX * y - fromY * x) / cross;
    const double share = (fromX * north - fromY * east) / cross;
    return along >= 0.0 && share >= 0.0 && share <= 1.0 ? std::optional(along) : std::nullopt;
}

TEST(SegmentBins, LeadToTheFirstPieceAheadAsLookingAtAllOfThemDoes) {
    std::mt19937 random(20261127);
    std::uniform_real_distribution<double> east(-900.0, 400.0);
    std::uniform_real_distribution<double> north(50.0, 350.0);
    std::uniform_real_distribution<double> length(-60.0, 60.0);
    std::uniform_int_distribution<int> degrees(0, 359);
    for (const int count : {1, 2, 40, 700}) {
        std::vector<SegmentBins::Piece> pieces;
        for (int k = 0; k < count; ++k) {
            const WaterPoint a{east(random), north(random)};
            pieces.push_back({a, {a.x_m + length(random), a.y_m + length(random)}});
        }
        const SegmentBins bins(pieces);
        std::size_t met = 0;
        std::size_t looked = 0;
        for (int k = 0; k < 3000; ++k) {
            const WaterPoint p{1.3 * east(random), 2.0 * north(random) - 100.0};
            const auto towards = units::Bearing::degrees(degrees(random));
            std::optional<double> all_m;
            for (const SegmentBins::Piece& piece : pieces) {
                const auto m = meets_m(p, towards.east(), towards.north(), piece);
                all_m = m && (!all_m || *m < *all_m) ? m : all_m;
            }
            std::optional<double> first_m;
            bins.along(
                p, towards.east(), towards.north(),
                [&](std::size_t i) {
                    ++looked;
                    const auto m = meets_m(p, towards.east(), towards.north(), pieces[i]);
                    first_m = m && (!first_m || *m < *first_m) ? m : first_m;
                },
                [&](double bin_m) { return first_m && *first_m < bin_m; });
            ASSERT_EQ(first_m, all_m)
                << count << ": " << p.x_m << ' ' << p.y_m << ' ' << towards.inDegrees();
            met += first_m ? 1U : 0U;
        }
        EXPECT_GT(met, count == 1 ? 0U : 10U) << count;
        if (count == 700) {
            EXPECT_LT(looked, 3000U * 60U) << "what lies behind the first is not looked at";
        }
    }
}

TEST(SegmentBins, OfNothingMeetNothing) {
    const SegmentBins none;
    const SegmentBins empty{std::span<const SegmentBins::Piece>()};
    for (const SegmentBins* bins : {&none, &empty}) {
        bins->along(
            {0, 0}, 1.0, 0.0, [](std::size_t) { FAIL(); }, [](double) { return false; });
    }
}

} // namespace
