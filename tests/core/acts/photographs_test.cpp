// SPDX-License-Identifier: GPL-3.0-or-later
// Photographs fall into stays and to fish by when they were taken.
#include "core/water/steps/place_photographs.h"

#include "core/acts/stays.h"
#include "tests/support/made_up_photograph.h"
#include "tests/support/scratch_folder.h"

#include <gtest/gtest.h>

namespace {

using Is = water::PlacedPhotograph::Is;
using namespace std::chrono_literals;

units::Moment at(const char* text) {
    return units::momentFrom(text, units::Clock()).value();
}

/// A stay from 8 to 10 with pike at 8:30 and 9:30, and one from 11 to 12.
water::Water twoStays() {
    water::Water water;
    logbook::Stay stay;
    stay.id = logbook::StayId(1);
    stay.start = at("2026-10-03T08:00:00Z");
    stay.end = at("2026-10-03T10:00:00Z");
    for (const auto after : {30min, 90min}) {
        logbook::Fish pike;
        pike.id = logbook::FishId(2 + static_cast<int>(stay.runs.size()));
        pike.time = stay.start + after;
        stay.runs.push_back(pike);
    }
    logbook::Stay later;
    later.id = logbook::StayId(9);
    later.start = at("2026-10-03T11:00:00Z");
    later.end = at("2026-10-03T12:00:00Z");
    water.log = {stay, later};
    return water;
}

class PlacedPhotographs : public testing::Test {
protected:
    water::PlacedPhotograph placed(const water::Water& water, const std::string& time,
                                   const std::string& name = "a.jpg") {
        support::CameraNotes notes;
        notes.time = time;
        const auto path = folder_.file(name, support::MadeUpPhotograph(notes).bytes());
        base::Progress quiet;
        auto all = water::placePhotographs(water, {path}, folder_.path(), quiet);
        EXPECT_TRUE(all.has_value());
        return all->front();
    }
    support::ScratchFolder folder_;
};

TEST_F(PlacedPhotographs, GoToTheFishOfTheirTimeElseToTheStay) {
    const water::Water water = twoStays();
    const auto fish = placed(water, "2026:10:03 08:36:00");
    EXPECT_EQ(fish.is, Is::ofFish);
    EXPECT_EQ(fish.fish, logbook::FishId(2));
    EXPECT_EQ(fish.path, "a.jpg") << "from the water's folder";
    EXPECT_EQ(placed(water, "2026:10:03 09:24:00").fish, logbook::FishId(3));
    const auto none = placed(water, "2026:10:03 09:00:00");
    EXPECT_EQ(none.is, Is::ofStay);
    EXPECT_EQ(none.stay, logbook::StayId(1));
    EXPECT_EQ(placed(water, "2026:10:03 10:14:00").stay, logbook::StayId(1)) << "on the way";
    EXPECT_EQ(placed(water, "2026:10:03 10:16:00").is, Is::elsewhere);
    EXPECT_EQ(placed(water, "2026:10:03 07:59:00").is, Is::elsewhere);
    EXPECT_EQ(placed(water, "").is, Is::undated);
}

TEST_F(PlacedPhotographs, AreAddedOnceAndTakeNobodysPlace) {
    const water::Water water = twoStays();
    const auto fish = placed(water, "2026:10:03 08:36:00");
    const auto stay = placed(water, "2026:10:03 11:30:00", "b.jpg");
    const auto with = acts::addPhotographs(water, {fish, stay});
    ASSERT_TRUE(with.has_value());
    EXPECT_EQ(with->log[0].runs[0].photograph, "a.jpg");
    EXPECT_EQ(with->log[1].photograph, "b.jpg");
    EXPECT_EQ(with->log[0].photograph, "");
    EXPECT_EQ(placed(*with, "2026:10:03 08:36:00").is, Is::known);
    EXPECT_EQ(placed(*with, "2026:10:03 08:36:00", "c.jpg").is, Is::ofStay)
        << "the fish has a picture of its own";
    EXPECT_EQ(placed(*with, "2026:10:03 11:30:00", "c.jpg").is, Is::taken);
    EXPECT_EQ(acts::addPhotographs(*with, {placed(*with, "2026:10:03 11:30:00", "c.jpg")}).value(),
              *with);
}

} // namespace
