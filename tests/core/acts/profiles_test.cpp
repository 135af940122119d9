// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/profiles.h"
#include "core/water/document/swap_parts.h"

#include "tests/support/full_water.h"

#include <gmock/gmock.h>
#include <gtest/gtest.h>

namespace {

using marks::FactorKind;
using testing::ElementsAre;
using testing::HasSubstr;
using water::Water;

std::vector<std::string> namesIn(const Water& water) {
    std::vector<std::string> names;
    for (const water::BeliefProfile& profile : water.beliefProfiles) {
        names.push_back(profile.name);
    }
    return names;
}

Water believing(double dropOff) {
    Water water = support::fullWater();
    water.plan.weights.set(FactorKind::dropOff, dropOff);
    return water;
}

TEST(Profiles, AreSavedAsThePlanWeighsNowAndTakenAgain) {
    const Water saved = acts::saveProfile(believing(1.75), "spring").value();
    EXPECT_THAT(namesIn(saved), ElementsAre("autumn", "spring"));
    EXPECT_EQ(saved.beliefProfiles[1].weights.of(FactorKind::dropOff), 1.75);
    EXPECT_THAT(water::differingParts(believing(1.75), saved), ElementsAre(water::Part::plan));
    Water other = saved;
    other.plan.weights = {};
    other.plan.weights.set(FactorKind::shelter, 0.0);
    other.plan.tryNew = 0.9;
    const Water taken = acts::takeProfile(other, "spring").value();
    EXPECT_EQ(taken.plan.weights, believing(1.75).plan.weights);
    EXPECT_EQ(taken.plan.tryNew, 0.9) << "how much to try is no belief";
    EXPECT_THAT(namesIn(taken), ElementsAre("autumn", "spring"));
}

TEST(Profiles, OfOneNameAreReplacedAndNotDoubled) {
    const Water saved = acts::saveProfile(believing(0.25), "autumn").value();
    EXPECT_THAT(namesIn(saved), ElementsAre("autumn"));
    EXPECT_EQ(saved.beliefProfiles[0].weights.of(FactorKind::dropOff), 0.25);
}

TEST(Profiles, AreNamedOtherwiseButNeverLikeAnother) {
    Water two = acts::saveProfile(believing(1.75), "spring").value();
    const Water named = acts::nameProfile(two, "autumn", "windy autumn").value();
    EXPECT_THAT(namesIn(named), ElementsAre("windy autumn", "spring"));
    EXPECT_EQ(named.beliefProfiles[0].weights, two.beliefProfiles[0].weights);
    EXPECT_TRUE(acts::nameProfile(two, "autumn", "autumn"));
    const auto doubled = acts::nameProfile(two, "autumn", "spring");
    ASSERT_FALSE(doubled);
    EXPECT_THAT(doubled.error().what, HasSubstr("'spring'"));
    EXPECT_FALSE(acts::nameProfile(two, "autumn", ""));
    EXPECT_FALSE(acts::saveProfile(two, ""));
}

TEST(Profiles, AreRemovedByName) {
    const Water two = acts::saveProfile(believing(1.75), "spring").value();
    EXPECT_THAT(namesIn(acts::removeProfile(two, "autumn").value()), ElementsAre("spring"));
    EXPECT_THAT(namesIn(acts::removeProfile(two, "spring").value()), ElementsAre("autumn"));
}

TEST(Profiles, ThatAreNotThereAreToldWithThoseThatAre) {
    Water two = acts::saveProfile(believing(1.75), "spring").value();
    for (const auto& wrong : {acts::takeProfile(two, "summer"), acts::removeProfile(two, "summer"),
                              acts::nameProfile(two, "summer", "winter")}) {
        ASSERT_FALSE(wrong);
        EXPECT_EQ(wrong.error().kind, base::ErrorKind::wrongUse);
        EXPECT_THAT(wrong.error().what, HasSubstr("'summer'"));
        EXPECT_EQ(wrong.error().whatToDo, "choose one of autumn, spring");
    }
    two.beliefProfiles.clear();
    EXPECT_EQ(acts::takeProfile(two, "summer").error().whatToDo, "save some first");
}

} // namespace
