// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/belief_record.h"

#include "core/learning/fit_catch.h"
#include "core/structure/zone_kinds.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using learning::Feature;
using learning::Group;
using marks::BeliefRecord;
using marks::FactorKind;
using marks::Weights;
using structure::ZoneKind;

std::int64_t keyOf(ZoneKind kind) {
    return static_cast<std::int64_t>(kind) + 1;
}

/// Stays of a day each, some on a drop-off and some in open water, with so many fish.
marks::LearnedCatch learnedFrom(int onDropOff, int inTheOpen) {
    std::vector<learning::Observation> stays;
    for (int day = 0; day < 24; ++day) {
        learning::Observation stay;
        stay.day = day;
        stay.rodHours = 8.0;
        stay.fish = day % 2 == 0 ? onDropOff : inTheOpen;
        stay.features = day % 2 == 0
                            ? learning::Features{{Group::kindAt, keyOf(ZoneKind::dropOff), 1.0},
                                                 {Group::kindsNear, keyOf(ZoneKind::dropOff), 0.4}}
                            : learning::Features{{Group::kindAt, 0, 1.0}};
        stays.push_back(stay);
    }
    base::Progress quiet;
    return {learning::fitCatch(stays, {}, quiet).value().model(), std::nullopt, 0, {}, 4.0};
}

BeliefRecord of(FactorKind kind, const Weights& weights, const marks::LearnedCatch* learned) {
    const auto records = marks::beliefRecordsOf(weights, learned);
    return *std::ranges::find(records, kind, &BeliefRecord::kind);
}

TEST(BeliefRecord, IsThereForEachBeliefInTheirOrder) {
    const auto records = marks::beliefRecordsOf({}, nullptr);
    ASSERT_EQ(records.size(), marks::allFactorKinds.size());
    for (std::size_t k = 0; k < records.size(); ++k) {
        EXPECT_EQ(records[k].kind, marks::allFactorKinds.at(k));
        EXPECT_EQ(records[k].said, Weights().of(records[k].kind));
        EXPECT_FALSE(records[k].log);
    }
}

TEST(BeliefRecord, LogSpeaksForWhatGaveFishAndAgainstWhatGaveNone) {
    const marks::LearnedCatch good = learnedFrom(6, 1);
    const auto loud = of(FactorKind::dropOff, {}, &good).log;
    ASSERT_TRUE(loud);
    EXPECT_GT(loud->low, 1.0);
    EXPECT_LT(loud->low, loud->times);
    EXPECT_LT(loud->times, loud->high);
    const marks::LearnedCatch poor = learnedFrom(0, 4);
    const auto against = of(FactorKind::dropOff, {}, &poor).log;
    ASSERT_TRUE(against);
    EXPECT_LT(against->high, 1.0);
    const marks::LearnedCatch alike = learnedFrom(2, 2);
    const auto open = of(FactorKind::dropOff, {}, &alike).log;
    ASSERT_TRUE(open);
    EXPECT_LT(open->low, 1.0);
    EXPECT_GT(open->high, 1.0);
}

TEST(BeliefRecord, LogIsSilentOnWhatNoStayWasNearAndIsNotAskedOfTheRest) {
    const marks::LearnedCatch learned = learnedFrom(6, 1);
    for (const FactorKind kind : marks::allFactorKinds) {
        const BeliefRecord record = of(kind, {}, &learned);
        const bool isAsked = kind == FactorKind::dropOff || kind == FactorKind::weedEdge ||
                             kind == FactorKind::feature || kind == FactorKind::windward;
        EXPECT_EQ(record.isAskedOfLog, isAsked) << marks::nameOf(kind);
        EXPECT_EQ(record.log.has_value(), kind == FactorKind::dropOff) << marks::nameOf(kind);
    }
}

TEST(BeliefRecord, SaidTimesIsTheBeliefAtItsFullestAloneAndBesideALog) {
    const marks::LearnedCatch learned = learnedFrom(6, 1);
    Weights weights;
    EXPECT_NEAR(of(FactorKind::dropOff, weights, nullptr).saidTimes, std::exp(0.4 * 0.5), 1e-12);
    EXPECT_EQ(of(FactorKind::dropOff, weights, &learned).saidTimes, 1.0);
    weights.set(FactorKind::dropOff, 1.5);
    EXPECT_NEAR(of(FactorKind::dropOff, weights, nullptr).saidTimes, std::exp(0.6 * 0.5), 1e-12);
    EXPECT_NEAR(of(FactorKind::dropOff, weights, &learned).saidTimes, std::exp(0.2 * 0.5), 1e-12);
    weights.set(FactorKind::lessTried, 2.0);
    EXPECT_EQ(of(FactorKind::lessTried, weights, &learned).saidTimes, 1.0)
        << "it is no belief of the fish";
}

} // namespace
