// SPDX-License-Identifier: GPL-3.0-or-later
// The acts that need the water drawn: on sections, and on soundings that a rule has judged.
#include "app/edits/change_sections.h"
#include "app/edits/name_section.h"
#include "app/edits/take_back_soundings.h"
#include "core/acts/sections.h"
#include "core/sections/section.h"

#include "tests/app/edits/edit_case.h"
#include "tests/support/desk_bowl.h"

namespace {

using edit_case::Edits;
using edit_case::OpenWater;
using edit_case::Part;
using edit_case::Water;
using sections::SectionChange;

class MapEdits : public Edits {
protected:
    void SetUp() override {
        Edits::SetUp();
        fillWith(Water());
        ASSERT_TRUE(support::layBowl(open_));
        open_.undoStack().clear();
    }
    const sections::SectionMap& map() { return *open_.derived().sections; }
    geo::WaterPoint middle(std::size_t section) { return map().sections.at(section).middle; }
    geo::LonLat onEarth(geo::WaterPoint p) { return open_.water()->frame->toEarth(p); }
    /// How far a section reaches to the west and to the east.
    std::pair<double, double> sidesOf(std::size_t section) {
        std::pair<double, double> sides{middle(section).x_m, middle(section).x_m};
        for (const std::size_t cell : map().sections[section].cells) {
            const grid::GridFrame& frame = map().sectionOfCell.frame();
            const double x_m = frame.centre(frame.cellAt(cell)).x_m;
            sides = {std::min(sides.first, x_m), std::max(sides.second, x_m)};
        }
        return sides;
    }
    /// A section that shares a border with the first.
    std::size_t neighbour() {
        for (std::size_t i = 1; i < map().sections.size(); ++i) {
            if (edits::joinSections(open_, middle(0), middle(i))) {
                open_.undoStack().undo();
                open_.undoStack().clear();
                return i;
            }
        }
        ADD_FAILURE() << "the first section has no neighbour";
        return 0;
    }
};

TEST_F(MapEdits, OfSectionsKeepTheirPlacesAndLinesAndAreTakenBack) {
    const geo::WaterPoint a = middle(0);
    const geo::WaterPoint b = middle(neighbour());
    check({"Join sections",
           {Part::sections},
           [&](OpenWater& open) { EXPECT_TRUE(edits::joinSections(open, a, b).has_value()); },
           [&](Water& water) {
               water.sectionChanges.push_back(
                   {SectionChange::Kind::join, {onEarth(a), onEarth(b)}, {}});
           }});
    // Straight across, with one point that a hand trembled by less than a metre.
    const auto [west_m, east_m] = sidesOf(0);
    const geo::Path across{
        {west_m - 8.0, a.y_m}, {0.5 * (west_m + east_m), a.y_m + 0.5}, {east_m + 8.0, a.y_m}};
    check({"Split section",
           {Part::sections},
           [&](OpenWater& open) { EXPECT_TRUE(edits::splitSection(open, across).has_value()); },
           [&](Water& water) {
               water.sectionChanges.push_back(
                   {SectionChange::Kind::split, {}, {onEarth(across[0]), onEarth(across[2])}});
           }});
    const geo::WaterPoint at{0.6 * a.x_m + 0.4 * b.x_m, 0.6 * a.y_m + 0.4 * b.y_m};
    const geo::Path border{{at.x_m - 3.0 * (b.y_m - a.y_m), at.y_m + 3.0 * (b.x_m - a.x_m)},
                           {at.x_m + 3.0 * (b.y_m - a.y_m), at.y_m - 3.0 * (b.x_m - a.x_m)}};
    check({"Move border",
           {Part::sections},
           [&](OpenWater& open) { EXPECT_TRUE(edits::moveBorder(open, a, b, border).has_value()); },
           [&](Water& water) {
               water.sectionChanges.push_back({SectionChange::Kind::border,
                                               {onEarth(a), onEarth(b)},
                                               {onEarth(border[0]), onEarth(border[1])}});
           }});
    checkIdle("what cannot be", [&](OpenWater& open) {
        EXPECT_FALSE(edits::joinSections(open, a, a).has_value());
        EXPECT_FALSE(edits::splitSection(open, {a, {a.x_m + 3.0, a.y_m}}).has_value());
        EXPECT_FALSE(edits::moveBorder(open, a, {9000.0, 0.0}, border).has_value());
        edits::takeBackSectionChange(open);
        edits::takeBackSectionChanges(open);
    });
    Water changed = *open_.water();
    changed.sectionChanges = {{SectionChange::Kind::join, {onEarth(a), onEarth(b)}, {}},
                              {SectionChange::Kind::split, {}, {onEarth(a), onEarth(b)}}};
    fillWith(changed);
    check({"Take back change of sections",
           {Part::sections},
           [](OpenWater& open) { edits::takeBackSectionChange(open); },
           [](Water& water) { water.sectionChanges.pop_back(); }});
    check({"Take back all changes of sections",
           {Part::sections},
           [](OpenWater& open) { edits::takeBackSectionChanges(open); },
           [](Water& water) { water.sectionChanges.clear(); }});
}

TEST_F(MapEdits, NameASectionByAPlaceInsideIt) {
    const geo::LonLat first = onEarth(middle(0));
    const geo::LonLat second = onEarth(middle(1));
    check({"Name section",
           {Part::sections},
           [](OpenWater& open) { edits::nameSection(open, 1, "  Heron Bay "); },
           [&](Water& water) {
               water.sectionNames.push_back({second, "Heron Bay", 2});
           }});
    edits::nameSection(open_, 0, "Old");
    edits::nameSection(open_, 1, "Heron Bay");
    open_.undoStack().clear();
    check({"Name section",
           {Part::sections},
           [](OpenWater& open) { edits::nameSection(open, 0, "New"); },
           [&](Water& water) {
               water.sectionNames = {{second, "Heron Bay", 2}, {first, "New", 1}};
           }});
    check({"Name section",
           {Part::sections},
           [](OpenWater& open) { edits::nameSection(open, 1, "   "); },
           [&](Water& water) {
               water.sectionNames = {{first, "Old", 1}};
           }});
    checkIdle("no such section", [this](OpenWater& open) {
        edits::nameSection(open, -1, "None");
        edits::nameSection(open, static_cast<int>(map().sections.size()), "None");
    });
}

TEST_F(MapEdits, ANewNameTakesAwayAnUnnumberedOneOfItsOwnWaterOnly) {
    Water water = *open_.water();
    const std::vector<sections::SectionName> fromOlderFile{{onEarth(middle(0)), "Gannick Bar", 97},
                                                           {onEarth(middle(1)), "Heron Bay", 98}};
    water.sectionNames = fromOlderFile;
    const auto named = acts::nameSection(water, open_.derived(), 0, "New");
    ASSERT_TRUE(named);
    EXPECT_EQ(named->sectionNames, (std::vector<sections::SectionName>{
                                       fromOlderFile[1], {onEarth(middle(0)), "New", 1}}));
}

TEST_F(MapEdits, TakeBackWhatARuleOrTheHandSetAsideAndNothingElse) {
    // Of the bowl's own soundings the rules keep some; one here is a spike of 30 m.
    Water spiky = *open_.water();
    soundings::SurveyDay& day = spiky.days[0];
    day.soundings.edit()[100].shown = units::Depth::metres(30.0);
    day.setAsideByHand = {200, 201};
    fillWith(spiky);
    ASSERT_TRUE(support::derive(open_));
    const auto& verdicts = open_.derived().checked->survey.days[0].verdicts;
    ASSERT_EQ(verdicts[200], soundings::Verdict::byHand);
    ASSERT_NE(verdicts[100], soundings::Verdict::kept);
    ASSERT_EQ(verdicts[300], soundings::Verdict::kept);
    check({"Take soundings back",
           {Part::days},
           [](OpenWater& open) {
               edits::takeBackSoundings(open, {{100, 200, 300}});
           },
           [](Water& water) {
               water.days[0].setAsideByHand = {201};
               water.days[0].keptByHand = {100};
           }});
    checkIdle("kept already", [](OpenWater& open) {
        edits::takeBackSoundings(open, {{300}, {100}});
        edits::takeBackSoundings(open, {});
    });
}

TEST_F(Edits, OfSectionsNeedAMap) {
    Water bare = full();
    bare.frame.reset();
    fillWith(bare);
    checkIdle("no map", [](OpenWater& open) {
        const auto joined = edits::joinSections(open, {0.0, 0.0}, {10.0, 0.0});
        ASSERT_FALSE(joined.has_value());
        EXPECT_EQ(joined.error().what, "there are no sections yet");
        EXPECT_EQ(joined.error().kind, base::ErrorKind::wrongUse);
        edits::nameSection(open, 0, "None");
        edits::takeBackSoundings(open, {{1}});
    });
}

} // namespace
