// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/anchoring/broken_rules.h"

#include <gtest/gtest.h>

namespace {

using anchoring::breaksARule;
using anchoring::Caution;

TEST(BrokenRules, AreThoseThatTheProgramKeepsToWhenItLaysAnchors) {
    const auto metres = units::Length::metres(1.0);
    for (const Caution& broken : std::vector<Caution>{
             anchoring::LiesInClosedWater{}, anchoring::LiesAshore{},
             anchoring::RopeTooShort{{}, metres, metres}, anchoring::TooSteep{},
             anchoring::LaidOffTheWind{50.0, true}, anchoring::WindChangedSince{40.0}}) {
        EXPECT_TRUE(breaksARule(broken)) << broken.index();
    }
    for (const Caution& kept : std::vector<Caution>{
             anchoring::HighWaves{}, anchoring::ShortForTheWind{}, anchoring::ShortOfRoom{},
             anchoring::TurnedOffTheWind{}, anchoring::BowToOpenWater{},
             anchoring::LaidOffTheWind{10.0, false}, anchoring::LiesOffTheMark{metres}}) {
        EXPECT_FALSE(breaksARule(kept)) << kept.index();
    }
}

TEST(BrokenRules, OfALieAreAnyOfItsCautions) {
    anchoring::AnchorSet set;
    EXPECT_FALSE(breaksARule(set));
    set.cautions = {anchoring::HighWaves{}};
    EXPECT_FALSE(breaksARule(set));
    set.cautions.emplace_back(anchoring::TooSteep{});
    EXPECT_TRUE(breaksARule(set));
}

} // namespace
