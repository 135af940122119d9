// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/wording/belief_words.h"

#include <gtest/gtest.h>

namespace {

using marks::BeliefRecord;
using marks::FactorKind;
using wording::said;

BeliefRecord dropOff(double weight, double saidTimes) {
    return {FactorKind::dropOff, weight, std::nullopt, saidTimes, true};
}

TEST(BeliefWords, SayWhatTheUserSaid) {
    const QString alone = "; nothing caught yet: by your belief alone.";
    EXPECT_EQ(said(dropOff(1.0, 1.0), false), "You count it as usual" + alone);
    EXPECT_EQ(said(dropOff(1.0, 1.2214), false), "You count it as usual, ×1.22" + alone);
    EXPECT_EQ(said(dropOff(1.45, 1.094), false), "You count it more than usual, ×1.09" + alone);
    EXPECT_EQ(said(dropOff(0.3, 0.87), false), "You count it less than usual, ×0.87" + alone);
    EXPECT_EQ(said(dropOff(0.0, 0.8187), false), "You do not count it, ×0.82" + alone);
}

TEST(BeliefWords, SayWhatTheLogSaysAndHowSureItIs) {
    BeliefRecord record = dropOff(1.0, 1.0);
    record.log = {1.4, 1.1, 1.8};
    EXPECT_EQ(said(record, true), "You count it as usual; your log speaks for it: ×1.40, with 80 % "
                                  "between ×1.10 and ×1.80.");
    record.log = {0.7, 0.5, 0.99};
    EXPECT_EQ(said(record, true), "You count it as usual; your log speaks against it: ×0.70, with "
                                  "80 % between ×0.50 and ×0.99.");
    record.log = {1.1, 0.8, 1.5};
    EXPECT_EQ(said(record, true), "You count it as usual; your log cannot tell yet: ×1.10, with 80 "
                                  "% between ×0.80 and ×1.50.");
    record.log.reset();
    EXPECT_EQ(said(record, true), "You count it as usual; no stay of your log was near any.");
    record.kind = FactorKind::windward;
    record.said = 0.4;
    EXPECT_EQ(said(record, true), "You count it as usual; no stay of your log tells the wind.");
}

TEST(BeliefWords, SayWhyALogIsNotAsked) {
    const std::vector<std::pair<FactorKind, QString>> rows{
        {FactorKind::depth, "your log learns depths by itself, range by range"},
        {FactorKind::shelter, "your log keeps the wind, but no waves"},
        {FactorKind::record, "it says how far your log is believed"},
        {FactorKind::lessTried, "it says how much you want to find out"},
        {FactorKind::trust, "no fish can speak for it: it is of the chart"}};
    for (const auto& [kind, words] : rows) {
        const BeliefRecord record{kind, marks::Weights().of(kind), std::nullopt, 1.0, false};
        EXPECT_EQ(said(record, true), "You count it as usual; " + words + ".");
        EXPECT_EQ(said(record, false), said(record, true)) << "with a log or without";
    }
}

} // namespace
