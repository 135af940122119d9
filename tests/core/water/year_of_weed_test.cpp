// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/water/steps/year_of_weed.h"

#include <gtest/gtest.h>

namespace {

water::Water plannedFor(const char* day, std::initializer_list<const char*> seen) {
    water::Water water;
    water.plan.day.day = units::dayFrom(day).value();
    for (const char* each : seen) {
        weed::WeedNote note;
        note.seen = units::dayFrom(each);
        water.weedNotes.edit().push_back(note);
    }
    return water;
}

TEST(YearOfWeed, IsThatOfTheDayPlannedOrOfTheNewestNote) {
    EXPECT_EQ(water::yearOfWeed(plannedFor("2027-05-01", {"2025-08-20", "2024-08-20"})),
              std::chrono::year(2027));
    EXPECT_EQ(water::yearOfWeed(plannedFor("2024-05-01", {"2025-08-20", "2023-08-20"})),
              std::chrono::year(2025));
}

TEST(YearOfWeed, IsNoneWhereNoNoteSaysWhenItWasMade) {
    EXPECT_FALSE(water::yearOfWeed(plannedFor("2027-05-01", {"some day", ""})));
}

} // namespace
