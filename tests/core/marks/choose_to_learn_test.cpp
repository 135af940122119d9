// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/marks/choose_to_learn.h"

#include "core/learning/fit_catch.h"

#include <algorithm>
#include <cmath>

#include <gtest/gtest.h>

namespace {

using learning::Features;
using learning::Group;
using marks::Eligible;
using marks::Lesson;

/// Six places in a row, each in a section of its own or two by two, the first two well known.
class ChosenToLearn : public testing::Test {
protected:
    ChosenToLearn() {
        std::vector<learning::Observation> stays;
        for (int trip = 0; trip < 30; ++trip) {
            stays.push_back({{{Group::section, 0, 1.0}}, 4.0, 2, trip});
            stays.push_back({{{Group::section, 1, 1.0}}, 4.0, 1, trip});
        }
        base::Progress quiet;
        model_ = learning::fitCatch(stays, {}, quiet).value().model();
    }

    /// A place with its features; sorted by falling expectation before the choice.
    void add(double x_m, int section, Features features, double sureness = 1.0) {
        Lesson lesson{model_.expect(features), features, sureness};
        all_.push_back({{{x_m, 0.0}, lesson.expected.rate(), section, false}, lesson});
    }

    [[nodiscard]] std::vector<double> chosen(double eagerness, std::size_t count,
                                             std::size_t cap = 9) {
        std::ranges::stable_sort(all_, std::greater{},
                                 [](const auto& one) { return one.first.score; });
        std::vector<Eligible> eligible;
        std::vector<Lesson> lessons;
        for (const auto& [one, lesson] : all_) {
            eligible.push_back(one);
            lessons.push_back(lesson);
        }
        std::vector<double> where;
        for (const std::size_t k : marks::chooseToLearn(eligible, lessons, model_,
                                                        {count, 50.0, cap}, {eagerness, 4.0})) {
            where.push_back(eligible[k].place.x_m);
        }
        return where;
    }

    learning::CatchModel model_;
    std::vector<std::pair<Eligible, Lesson>> all_;
};

TEST_F(ChosenToLearn, FishesWhatIsKnownWithoutEagerness) {
    add(0, 0, {{Group::section, 0, 1.0}});
    add(100, 1, {{Group::section, 1, 1.0}});
    add(200, 2, {{Group::section, 2, 1.0}});
    EXPECT_EQ(chosen(0.0, 1), std::vector{0.0});
    EXPECT_EQ(chosen(0.0, 3).front(), 0.0);
}

TEST_F(ChosenToLearn, TriesNewWaterThatMightBeBetterWhereEager) {
    add(0, 0, {{Group::section, 1, 1.0}});
    add(200, 2, {{Group::section, 2, 1.0}});
    const double known = model_.expect({{Group::section, 1, 1.0}}).rate();
    const double fresh = model_.expect({{Group::section, 2, 1.0}}).rate();
    if (known > fresh) {
        EXPECT_EQ(chosen(0.0, 1), std::vector{0.0});
    }
    EXPECT_EQ(chosen(4.0, 1), std::vector{200.0});
}

TEST_F(ChosenToLearn, DoesNotAskTheSameThingTwice) {
    // Two of the same new section, and one of another: the second question goes to the other.
    add(0, 2, {{Group::section, 2, 1.0}});
    add(100, 2, {{Group::section, 2, 1.0}, {Group::wind, 0, 0.01}});
    add(200, 3, {{Group::section, 3, 0.99}});
    const auto where = chosen(2.0, 2);
    EXPECT_TRUE(std::ranges::find(where, 200.0) != where.end());
}

TEST_F(ChosenToLearn, LearnsNothingWhereWhatIsFoundCannotBeCountedOn) {
    add(0, 2, {{Group::section, 2, 1.0}}, 0.0);
    add(200, 3, {{Group::section, 3, 0.99}}, 1.0);
    EXPECT_EQ(chosen(2.0, 1), std::vector{200.0});
}

TEST_F(ChosenToLearn, KeepsTheSpacingAndTheCapUntilTheListStaysShort) {
    add(0, 0, {{Group::section, 0, 1.0}});
    add(30, 0, {{Group::section, 0, 1.0}});
    add(60, 0, {{Group::section, 0, 1.0}});
    add(120, 1, {{Group::section, 1, 1.0}});
    EXPECT_EQ(chosen(0.0, 2, 1), (std::vector{0.0, 120.0}));
    EXPECT_EQ(chosen(0.0, 3, 1), (std::vector{0.0, 120.0, 60.0})) << "the cap gives way";
    EXPECT_EQ(chosen(0.0, 4, 1).size(), 3U) << "the spacing does not";
}

TEST_F(ChosenToLearn, TakesThePinnedFirstAndLearnsFromThemToo) {
    add(0, 2, {{Group::section, 2, 1.0}});
    add(100, 2, {{Group::section, 2, 1.0}});
    add(200, 3, {{Group::section, 3, 0.98}});
    all_[0].first.isPinned = true;
    EXPECT_EQ(chosen(2.0, 2), (std::vector{0.0, 200.0}));
}

} // namespace
