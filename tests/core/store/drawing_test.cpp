// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/store/water_store.h"

#include "tests/support/made_up_water.h"
#include "tests/support/scratch_folder.h"

#include <algorithm>
#include <bit>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using support::MadeUpWater;
using support::ScratchFolder;

base::Progress quiet;

/// A tilted bottom under a water wider than one tile, with an island.
MadeUpWater tilted() {
    return support::madeUpWater(
        {{{{-700.0, -310.0}, {730.0, -290.0}, {690.0, 300.0}, {-710.0, 320.0}},
          {{{10.0, 10.0}, {40.0, 90.0}, {95.0, 15.0}}}}},
        [](geo::WaterPoint p) { return 6.0 + 0.004 * p.x_m - 0.003 * p.y_m; }, 4.0);
}

surface::DrawnWater drawnOf(const MadeUpWater& water) {
    const grid::GridFrame& frame = water.depth.frame();
    grid::Grid<float> halfWidth_m(frame, NAN);
    grid::Grid<surface::TrustName> names(frame, surface::TrustName::guess);
    for (std::size_t i = 0; i < frame.size(); ++i) {
        if (water.depth.has(i)) {
            halfWidth_m[i] = 0.1F + 0.001F * static_cast<float>(i % 977);
            names[i] = static_cast<surface::TrustName>(i % 3);
        }
    }
    surface::DrawnWater drawn{
        water.mask, water.depth, surface::TrustGrid(std::move(halfWidth_m), std::move(names)), {}};
    drawn.report.cell = units::Length::metres(4.0);
    drawn.report.stiffness = 1.0 / 3.0;
    drawn.report.heldOut = surface::HeldOutError{0.1, 0.2, 300};
    drawn.report.trustCurve = surface::TrustCurve{5.0, 0.4, 0.75, 120.0, 0.1};
    drawn.report.chosenFrom = 297;
    drawn.report.chosenOver = units::Area::hectares(12.0);
    drawn.report.isChoiceKept = true;
    drawn.report.spikes = {3, 99};
    drawn.report.iterations = 17;
    return drawn;
}

bool areSameBits(const std::vector<float>& a, const std::vector<float>& b) {
    return std::ranges::equal(a, b, [](float x, float y) {
        return std::bit_cast<std::uint32_t>(x) == std::bit_cast<std::uint32_t>(y) ||
               (std::isnan(x) && std::isnan(y));
    });
}

/// What the store kept; a failure where it kept none.
store::KeptDrawing keptIn(store::WaterStore& store, const geo::Outline& outline) {
    auto kept = store.loadDrawing(outline);
    if (!kept) {
        ADD_FAILURE() << kept.error().sentence();
        return {};
    }
    if (std::optional<store::KeptDrawing>& drawing = *kept) {
        return std::move(*drawing);
    }
    ADD_FAILURE() << "no drawing was kept";
    return {};
}

TEST(Drawing, IsGivenBackToTheLastBitWithItsStamp) {
    const ScratchFolder folder;
    const MadeUpWater water = tilted();
    const surface::DrawnWater drawn = drawnOf(water);
    const water::Stamp stamp(0xfedc'ba98'7654'3210ULL);
    {
        auto store = store::create(folder.path() / "water.gpkg");
        ASSERT_TRUE(store.has_value());
        const auto saved = (*store)->saveDrawing(drawn, water.frame, stamp);
        ASSERT_TRUE(saved.has_value()) << saved.error().sentence();
    }
    auto store = store::open(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const store::KeptDrawing kept = keptIn(**store, water.outline);
    const surface::DrawnWater& back = kept.drawn;
    EXPECT_EQ(kept.stamp, stamp);
    EXPECT_EQ(back.depth.frame(), drawn.depth.frame());
    EXPECT_TRUE(areSameBits(back.depth.raw_m(), drawn.depth.raw_m()));
    EXPECT_TRUE(
        areSameBits(back.trust.halfWidths_m().values(), drawn.trust.halfWidths_m().values()));
    EXPECT_EQ(back.trust.names().values(), drawn.trust.names().values());
    EXPECT_EQ(back.mask.active(), drawn.mask.active());
    EXPECT_EQ(back.mask.shares(), drawn.mask.shares());
    EXPECT_EQ(back.report.stiffness, drawn.report.stiffness);
    EXPECT_EQ(back.report.spikes, drawn.report.spikes);
    EXPECT_EQ(back.report.iterations, 17);
    EXPECT_EQ(back.report.heldOut.value_or(surface::HeldOutError()).mean_m, 0.2);
    EXPECT_EQ(back.report.trustCurve, drawn.report.trustCurve);
    EXPECT_EQ(back.report.chosenFrom, 297U);
    EXPECT_EQ(back.report.chosenOver, drawn.report.chosenOver);
    EXPECT_TRUE(back.report.isChoiceKept);
}

TEST(Drawing, ReplacesTheOneBefore) {
    const ScratchFolder folder;
    const MadeUpWater water = tilted();
    surface::DrawnWater drawn = drawnOf(water);
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    ASSERT_TRUE((*store)->saveDrawing(drawn, water.frame, water::Stamp(1)).has_value());
    drawn.report.iterations = 18;
    ASSERT_TRUE((*store)->saveDrawing(drawn, water.frame, water::Stamp(2)).has_value());
    const store::KeptDrawing kept = keptIn(**store, water.outline);
    EXPECT_EQ(kept.stamp, water::Stamp(2));
    EXPECT_EQ(kept.drawn.report.iterations, 18);
    const auto report = (*store)->check(quiet);
    ASSERT_TRUE(report.has_value());
    EXPECT_TRUE(report->isWhole()) << report->faults.front();
    EXPECT_TRUE(report->hasDrawing);
}

TEST(Drawing, IsNotThereInAFreshFile) {
    const ScratchFolder folder;
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    const auto kept = (*store)->loadDrawing(tilted().outline);
    ASSERT_TRUE(kept.has_value());
    EXPECT_FALSE(kept->has_value());
}

TEST(Drawing, IsNotTakenForAnotherShore) {
    const ScratchFolder folder;
    const MadeUpWater water = tilted();
    auto store = store::create(folder.path() / "water.gpkg");
    ASSERT_TRUE(store.has_value());
    ASSERT_TRUE((*store)->saveDrawing(drawnOf(water), water.frame, water::Stamp(1)).has_value());
    const auto other = geo::Outline::make(
        {{{{-700.0, -310.0}, {730.0, -290.0}, {500.0, 300.0}, {-710.0, 320.0}}, {}}}, water.frame);
    const auto kept = (*store)->loadDrawing(*other);
    ASSERT_TRUE(kept.has_value());
    EXPECT_FALSE(kept->has_value());
}

} // namespace
