// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/reasons.h"

#include <gtest/gtest.h>

#include <QRegularExpression>

#include <array>
#include <set>

namespace {

using marks::Reason;
using preferences::UnitSystem;
using units::Depth;
using units::Length;
using units::Speed;
using Way = marks::WindOnSlope::Way;

struct Row {
    Reason reason;
    const char* metric;
    const char* imperial; ///< Null: the same.
};

const Speed sixMetresASecond = Speed::metresPerSecond(6.04);

/// What every reason says, in metres and in feet.
const std::vector<Row>& rows() {
    static const std::vector<Row> all{
        {std::monostate{}, "", nullptr},
        {marks::FishableWater{0.634, Depth::metres(2.24), Depth::metres(5.06), Depth::metres(9.1)},
         "63 % of the water within a cast can be fished, 2.2 to 5.1 m deep",
         "63 % of the water within a cast can be fished, 7.3 to 16.6 ft deep"},
        {marks::FishableWater{0.0, {}, {}, Depth::metres(9.144)},
         "nothing within a cast is open and no deeper than 9.1 m",
         "nothing within a cast is open and no deeper than 30.0 ft"},
        {marks::DropOffNear{Length::metres(57.6), Depth::metres(3.96), Depth::metres(8.84)},
         "58 m of drop-off, 4.0 to 8.8 m, within a cast",
         "189 ft of drop-off, 13.0 to 29.0 ft, within a cast"},
        {marks::DropOffNear{}, "no drop-off within a cast", nullptr},
        {marks::WeedEdgeNear{Length::metres(12.4)}, "12 m of weed edge within a cast",
         "41 ft of weed edge within a cast"},
        {marks::WeedEdgeNear{}, "no weed edge within a cast", nullptr},
        {marks::FeaturesNear{units::Area::squareMetres(310.4), structure::ZoneKind::spur},
         "310 m² of hump, hole, spur or saddle within a cast, most of it spur",
         "3341 ft² of hump, hole, spur or saddle within a cast, most of it spur"},
        {marks::FeaturesNear{}, "no hump, hole, spur or saddle within a cast", nullptr},
        {marks::WindOnSlope{sixMetresASecond, Way::up, 0.05},
         "the wind of 6.0 m/s blows up a slope of 5 %",
         "the wind of 13.5 mph blows up a slope of 5 %"},
        {marks::WindOnSlope{sixMetresASecond, Way::down, 0.05},
         "the wind of 6.0 m/s blows down a slope of 5 %",
         "the wind of 13.5 mph blows down a slope of 5 %"},
        {marks::WindOnSlope{sixMetresASecond, Way::neither, 0.0},
         "the wind blows neither up the slope nor down it", nullptr},
        {marks::NoWind{}, "no wind", nullptr},
        {marks::WindNotKnown{}, "how the wind blows on to it is not known and not counted",
         nullptr},
        {marks::WavesNotKnown{}, "the wind is not said: waves and shelter are not counted",
         nullptr},
        {marks::WaveState{Length::metres(412.3), Length::metres(0.118)},
         "waves of 0.12 m after 412 m of open water",
         "waves of 0.4 ft after 1353 ft of open water"},
        {marks::InTwoWinds{std::chrono::hours(13),
                           marks::WaveState{Length::metres(412.3), Length::metres(0.118)},
                           marks::WavesNotKnown{}},
         "waves of 0.12 m after 412 m of open water; from 13:00 the wind is not said: waves and "
         "shelter are not counted",
         "waves of 0.4 ft after 1353 ft of open water; from 13:00 the wind is not said: waves and "
         "shelter are not counted"},
        {marks::CatchHere{2.46, 1.23},
         "2.5 fish in 10 rod-hours to be expected here, 1.2 over the whole water", nullptr},
        {marks::LogIsSilent{}, "the log does not tell yet", nullptr},
        {marks::RateBetween{0.94, 4.16},
         "the rate here may lie between 0.9 and 4.2 in 10 rod-hours", nullptr},
        {marks::NeverTried{}, "never tried", nullptr},
        {marks::DepthsKnownTo{Length::metres(0.44)}, "depths within a cast known to ±0.4 m",
         "depths within a cast known to ±1.4 ft"},
        {marks::DepthsKnownTo{}, "how far the depths may be off is not known", nullptr},
        {marks::UnderTheBoat{structure::ZoneKind::dropOff}, "drop-off under the boat", nullptr},
        {marks::UnderTheBoat{}, "open water under the boat", nullptr},
        {marks::HoursPlanned{}, "at the hours planned", nullptr},
        {marks::BestOfMany{}, "what looks best of many looks better than it is", nullptr}};
    return all;
}

TEST(Reasons, SayTheQuantityBehindEachInTheUsersUnits) {
    std::set<std::size_t> kinds;
    for (const Row& row : rows()) {
        kinds.insert(row.reason.index());
        EXPECT_EQ(wording::said(row.reason, wording::Words()), row.metric);
        EXPECT_EQ(wording::said(row.reason, wording::Words(UnitSystem::imperial)),
                  row.imperial != nullptr ? row.imperial : row.metric);
    }
    EXPECT_EQ(kinds.size(), std::variant_size_v<Reason>) << "every kind is here";
}

TEST(Reasons, AreToldInOneLineInMetresForAFile) {
    using marks::FactorKind;
    const std::vector<marks::Mark> none;
    const marks::ToldMarks told = wording::told(none);
    EXPECT_EQ(told.reasonsOf({{FactorKind::weedEdge, 1, 1, marks::WeedEdgeNear{}},
                              {FactorKind::trust, 1, 1, {}},
                              {FactorKind::trust, 1, 1, marks::DepthsKnownTo{Length::metres(1)}}}),
              "no weed edge within a cast; depths within a cast known to ±1.0 m");
    EXPECT_EQ(told.reasonsOf({}), "");
}

} // namespace
