// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/edits/add_survey_day.h"
#include "app/edits/reshape_shore.h"
#include "app/edits/set_shoreline.h"
#include "tests/app/edits/edit_case.h"

namespace {

using edit_case::Edits;
using edit_case::OpenWater;
using edit_case::Part;
using edit_case::Water;

class ShoreEdits : public Edits {
protected:
    [[nodiscard]] geo::WaterPoint at(geo::LonLat place) { return frame_.toWater(place); }
    const geo::WaterFrame frame_ = geo::WaterFrame::centredOn({3.1, 55.2}).value();
};

TEST_F(ShoreEdits, MoveAddAndRemoveTheCornerThatIsPointedAt) {
    const geo::WaterPoint to = at({3.112, 55.207});
    check({"Move shore corner",
           {Part::shoreline},
           [&](OpenWater& open) {
               EXPECT_TRUE(edits::moveShoreCorner(open, {0, 0, 2}, to).has_value());
           },
           [&](Water& water) { water.shoreline.edit()[0].outer[2] = frame_.toEarth(to); }});
    check({"Add shore corner",
           {Part::shoreline},
           [&](OpenWater& open) {
               EXPECT_TRUE(edits::addShoreCorner(open, {0, 0, 1}, to).has_value());
           },
           [&](Water& water) {
               auto& ring = water.shoreline.edit()[0].outer;
               ring.insert(ring.begin() + 2, frame_.toEarth(to));
           }});
    check({"Take away shore corner",
           {Part::shoreline},
           [](OpenWater& open) {
               EXPECT_TRUE(edits::removeShoreCorner(open, {0, 0, 1}).has_value());
           },
           [](Water& water) {
               auto& ring = water.shoreline.edit()[0].outer;
               ring.erase(ring.begin() + 1);
           }});
}

TEST_F(ShoreEdits, DrawAndTakeAwayIslandsAndTraceTheShoreAnew) {
    const geo::Ring island{at({3.106, 55.201}), at({3.107, 55.201}), at({3.107, 55.202})};
    check({"Draw island",
           {Part::shoreline},
           [&](OpenWater& open) { EXPECT_TRUE(edits::addIsland(open, island).has_value()); },
           [&](Water& water) {
               water.shoreline.edit()[0].islands.push_back(frame_.toEarth(island));
           }});
    check({"Take away island",
           {Part::shoreline},
           [&](OpenWater& open) {
               EXPECT_TRUE(edits::removeIslandAt(open, at({3.1038, 55.2043})).has_value());
           },
           [](Water& water) { water.shoreline.edit()[0].islands.clear(); }});
    const geo::Ring ring{at({3.09, 55.19}), at({3.12, 55.19}), at({3.12, 55.21}),
                         at({3.09, 55.21})};
    check({"Trace shoreline",
           {Part::shoreline},
           [&](OpenWater& open) { EXPECT_TRUE(edits::traceShore(open, ring).has_value()); },
           [&](Water& water) { water.shoreline.edit()[0].outer = frame_.toEarth(ring); }});
}

TEST_F(ShoreEdits, ThatCannotBeSayWhyAndChangeNothing) {
    checkIdle("nothing of it", [&](OpenWater& open) {
        EXPECT_FALSE(edits::moveShoreCorner(open, {0, 0, 2}, at({3.09, 55.203})).has_value());
        EXPECT_FALSE(edits::addShoreCorner(open, {1, 0, 0}, at({3.09, 55.203})).has_value());
        EXPECT_FALSE(edits::removeShoreCorner(open, {0, 1, 0}).has_value());
        EXPECT_FALSE(edits::addIsland(open, {at({4.0, 55.2}), at({4.1, 55.2}), at({4.0, 55.3})})
                         .has_value());
        EXPECT_FALSE(edits::removeIslandAt(open, at({3.101, 55.201})).has_value());
        EXPECT_FALSE(edits::traceShore(open, {at({3.1, 55.2}), at({3.2, 55.2})}).has_value());
    });
    Water bare = full();
    bare.frame.reset();
    fillWith(bare);
    checkIdle("no frame", [&](OpenWater& open) {
        const auto moved = edits::moveShoreCorner(open, {0, 0, 2}, {0.0, 0.0});
        ASSERT_FALSE(moved.has_value());
        EXPECT_EQ(moved.error().kind, base::ErrorKind::wrongUse);
        EXPECT_EQ(moved.error().what, "there is no chart to draw a shore on yet");
    });
}

TEST_F(ShoreEdits, SetAShorelineAndLayTheFrameWithTheFirst) {
    const std::vector<geo::LonLatPiece> other{
        {{{3.21, 55.31}, {3.23, 55.31}, {3.23, 55.33}, {3.21, 55.33}}, {}}};
    check({"Set shoreline",
           {Part::shoreline},
           [&](OpenWater& open) { EXPECT_TRUE(edits::setShoreline(open, other).has_value()); },
           [&](Water& water) { water.shoreline = other; }});
    Water bare = full();
    bare.frame.reset();
    bare.shoreline.edit().clear();
    fillWith(bare);
    check({"Set shoreline",
           {Part::shoreline, Part::facts},
           [&](OpenWater& open) { EXPECT_TRUE(edits::setShoreline(open, other).has_value()); },
           [&](Water& water) {
               water.shoreline = other;
               water.frame = geo::WaterFrame::centredOn({3.22, 55.32}).value();
           }});
    checkIdle("no shore", [](OpenWater& open) {
        EXPECT_TRUE(edits::setShoreline(open, {}).has_value());
        EXPECT_FALSE(
            edits::setShoreline(open, {{{{3.0, 55.0}, {9.0, 55.0}, {9.0, 56.0}}, {}}}).has_value())
            << "no frame can be laid round it";
    });
}

TEST_F(ShoreEdits, LayTheFrameWithTheFirstSurveyDayWhereThereIsNoShore) {
    Water bare = full();
    bare.frame.reset();
    bare.shoreline.edit().clear();
    bare.days.clear();
    fillWith(bare);
    soundings::SurveyDay day;
    day.name = "first";
    day.soundings.edit().assign(2, {{3.22, 55.32}, units::Depth::metres(4.0), std::nullopt});
    check({"Bring in first",
           {Part::days, Part::facts},
           [&](OpenWater& open) { EXPECT_TRUE(edits::addSurveyDay(open, day).has_value()); },
           [&](Water& water) {
               water.days = {day};
               water.days[0].id = soundings::SurveyDayId(52);
               water.frame = geo::WaterFrame::centredOn({3.22, 55.32}).value();
           }});
    day.soundings.edit().clear();
    checkIdle("nothing sounded",
              [&](OpenWater& open) { EXPECT_FALSE(edits::addSurveyDay(open, day).has_value()); });
}

} // namespace
