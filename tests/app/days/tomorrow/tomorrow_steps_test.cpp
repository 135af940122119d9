// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/tomorrow/steps.h"
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/set_plan.h"
#include "app/widgets/interval_bar.h"
#include "app/widgets/plain_table.h"
#include "app/wording/cautions.h"
#include "app/wording/planned_words.h"
#include "app/wording/reasons.h"
#include "tests/app/days/tomorrow/tomorrow_desk.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPageSize>
#include <QPushButton>
#include <QSignalSpy>
#include <QTest>

namespace {

namespace tomorrow = days::tomorrow;
using widgets::PlainTable;

constexpr int marksStep = 3;
constexpr int anchorsStep = 4;
constexpr int orderStep = 5;
constexpr int sheetStep = 6;

/// At the desk, with a day that has something to mind.
class TomorrowSteps : public support::TomorrowDesk {
protected:
    static void SetUpTestSuite() {
        sitDown();
        statesBefore_ = states();
        isReadyBefore_ = button("Save PDF…").isEnabled() || button("Print…").isEnabled() ||
                         button("Keep").isEnabled();
        layPlanned([](marks::Plan& plan) {
            plan.count = 4;
            plan.day.levelChange = units::Length::metres(-0.4);
            plan.day.wind = {units::Bearing::degrees(240.0), units::Speed::metresPerSecond(9.0)};
        });
        ASSERT_EQ(planned().marks.size(), 4U);
    }

    static QStringList states() {
        turn();
        QStringList states;
        for (int step = 0; step < desk_->day->steps().count(); ++step) {
            states << desk_->day->steps().stateOf(step);
        }
        return states;
    }
    static PlainTable* tableFrom(const QString& firstColumn) {
        turn();
        for (auto* found : desk_->day->findChildren<PlainTable*>()) {
            if (found->headingOf(0) == firstColumn) {
                return found;
            }
        }
        return nullptr;
    }
    /// The table of marks is the one with a score, that of the day the one with times.
    static PlainTable* tableWith(const QString& column) {
        turn();
        for (auto* found : desk_->day->findChildren<PlainTable*>()) {
            for (int i = 0; i < found->columnCount(); ++i) {
                if (found->headingOf(i) == column) {
                    return found;
                }
            }
        }
        return nullptr;
    }
    static std::vector<QStringList> rowsOf(const PlainTable* table) {
        std::vector<QStringList> rows;
        for (int row = 0; row < table->rowCount(); ++row) {
            QStringList cells;
            for (int column = 0; column < table->columnCount(); ++column) {
                cells << table->words(row, column);
            }
            rows.push_back(cells);
        }
        return rows;
    }
    static bool isOld(int step) {
        turn();
        const auto heads = desk_->day->findChildren<QAbstractButton*>();
        for (const auto* head : heads) {
            if (head->accessibleDescription() ==
                "out of date · " + desk_->day->steps().stateOf(step)) {
                return true;
            }
        }
        return false;
    }

    static inline QStringList statesBefore_;
    static inline bool isReadyBefore_ = true;
};

TEST_F(TomorrowSteps, BeforeThereAreMarksEachStepSaysSo) {
    EXPECT_EQ(statesBefore_[marksStep], "none yet");
    EXPECT_EQ(statesBefore_[anchorsStep], "no mark");
    EXPECT_EQ(statesBefore_[orderStep], "none yet");
    EXPECT_EQ(statesBefore_[sheetStep], "One sheet, A4, black and white");
    EXPECT_FALSE(isReadyBefore_);
}

TEST_F(TomorrowSteps, EachStateIsThatOfThePlan) {
    const wording::Words words;
    const auto& plan = planned().plan;
    const auto& rules = desk_->open.water()->houseRules;
    EXPECT_EQ(states(),
              QStringList({tomorrow::conditionsLine(plan.day, words),
                           tomorrow::tackleLine(plan.tackle, rules, words),
                           tomorrow::weightsLine(plan.weights),
                           QStringLiteral("4 of %1 looked at").arg(planned().looked),
                           QStringLiteral("mark 1: bow %1, stern %2")
                               .arg(words.length(planned().marks[0].anchors.bow.rope),
                                    words.length(planned().marks[0].anchors.stern->rope)),
                           tomorrow::dayLine(planned(), words), "One sheet, A4, black and white"}));
    for (const int step : {marksStep, anchorsStep, orderStep}) {
        EXPECT_FALSE(isOld(step)) << step;
    }
    EXPECT_TRUE(button("Save PDF…").isEnabled());
    EXPECT_TRUE(button("Print…").isEnabled());
}

TEST_F(TomorrowSteps, WhatWasPlannedBeforeAChangeIsMarkedOld) {
    edits::setPlan(desk_->open, "Set", [](marks::Plan& plan) { plan.tackle.rods = 2; });
    for (const int step : {marksStep, anchorsStep, orderStep}) {
        EXPECT_TRUE(isOld(step)) << step;
    }
}

TEST_F(TomorrowSteps, EveryTableShowsThePlan) {
    const wording::Words words;
    const auto& water = *desk_->open.water();
    EXPECT_EQ(rowsOf(tableWith("Score")), tomorrow::markRows(planned(), words));
    EXPECT_EQ(rowsOf(tableWith("Arrive")), tomorrow::dayRows(planned(), water.clock, words));
    EXPECT_TRUE(says(tomorrow::lightWords(planned().light, water.clock)));
    const QStringList cautions = wording::cautionsOf(planned(), words);
    ASSERT_FALSE(cautions.isEmpty()) << "the day is made so that there is something to mind";
    EXPECT_TRUE(says(cautions.join('\n')));
}

TEST_F(TomorrowSteps, TheDaySaysWhatIsLeftOutOfItAndWhy) {
    edits::setPlan(desk_->open, "Set", [](marks::Plan& plan) {
        plan.day.end = plan.day.start + std::chrono::minutes(100);
    });
    replan();
    const QStringList notes = wording::notesOf(planned());
    ASSERT_FALSE(planned().day.leftOut.empty()) << "four stays do not fit into 100 minutes";
    ASSERT_FALSE(notes.isEmpty());
    EXPECT_TRUE(says((wording::windsOfStops(planned(), wording::Words()) + notes).join('\n')));
}

TEST_F(TomorrowSteps, TheChosenMarkIsShownWithItsOwnAnchorsRodsReasonsAndCautions) {
    const wording::Words words;
    QSignalSpy looked(&desk_->chart, &days::ChartLink::lookedAt);
    for (int row = 3; row >= 0; --row) {
        tableWith("Score")->selectRow(row);
        const marks::Mark& mark = planned().marks[static_cast<std::size_t>(row)];
        EXPECT_EQ(desk_->chart.content().selection.mark, mark.rank);
        EXPECT_EQ(looked.back().at(0).value<geo::WaterPoint>(), mark.place);
        EXPECT_EQ(rowsOf(tableFrom("Anchor")),
                  tomorrow::anchorRows(mark, desk_->open.water()->frame, words));
        EXPECT_EQ(rowsOf(tableFrom("Rod")), tomorrow::rodRows(mark, words));
        EXPECT_TRUE(says(tomorrow::lieWords(mark, words)));
        EXPECT_TRUE(says(tomorrow::expectedWords(mark)));
        const QString further = tomorrow::furtherReasons(mark, words).join('\n');
        EXPECT_TRUE(further.isEmpty() || says(further));
        const QStringList cautions = wording::cautionsOf(mark, words);
        EXPECT_TRUE(cautions.isEmpty() || says(cautions.join('\n')));
        EXPECT_TRUE(
            says(QStringLiteral("%1  %2").arg(mark.rank).arg(tomorrow::markTitle(mark, words))));
        QStringList bars;
        for (const marks::Factor& factor : tomorrow::weighty(mark)) {
            const QString why = wording::said(factor.because, words);
            bars << tomorrow::factorTitle(factor.kind) + ": " +
                        QStringLiteral("×%1").arg(factor.times, 0, 'f', 2) +
                        (why.isEmpty() ? QString() : ", " + why);
        }
        EXPECT_EQ(desk_->day->findChildren<widgets::IntervalBar*>().back()->accessibleDescription(),
                  bars.join("; "));
    }
}

TEST_F(TomorrowSteps, TellTheCautionsOfTheChosenMarkWhereItIsChosenAndWhereItsRopesAre) {
    edits::setPlan(desk_->open, "Set", [](marks::Plan& plan) {
        plan.tackle.bowRope = units::Length::metres(9.0);
        plan.tackle.scope = 6.0;
    });
    replan();
    int minded = 0;
    for (int row = 0; row < static_cast<int>(planned().marks.size()); ++row) {
        tableWith("Score")->selectRow(row);
        const QStringList cautions =
            wording::cautionsOf(planned().marks[static_cast<std::size_t>(row)], wording::Words());
        if (!cautions.isEmpty()) {
            ++minded;
            EXPECT_EQ(timesSaid(cautions.join('\n')), 2) << cautions.join('\n').toStdString();
            EXPECT_EQ(timesSaid(cautions.join('\n'), "wrong"), 2) << "whispered";
        }
    }
    EXPECT_GT(minded, 0) << "ropes as short as these want minding";
}

TEST_F(TomorrowSteps, FollowTheUnitsOfTheUser) {
    desk_->preferences.setUnits(preferences::UnitSystem::imperial);
    const wording::Words words(preferences::UnitSystem::imperial);
    EXPECT_EQ(rowsOf(tableWith("Score")), tomorrow::markRows(planned(), words));
    EXPECT_EQ(states()[orderStep], tomorrow::dayLine(planned(), words));
    EXPECT_EQ(rowsOf(tableFrom("Rod")), tomorrow::rodRows(planned().marks[0], words));
    desk_->preferences.setUnits(preferences::UnitSystem::metric);
}

TEST_F(TomorrowSteps, PinKeepsTheChosenMarkAndUnpinLetsItGo) {
    tableWith("Score")->selectRow(1);
    const marks::Mark mark = planned().marks[1];
    button("Keep").click();
    ASSERT_EQ(desk_->open.water()->pinnedMarks.size(), 1U);
    EXPECT_EQ(desk_->open.water()->pinnedMarks[0].place, mark.lonLat);
    EXPECT_EQ(desk_->open.water()->pinnedMarks[0].name, mark.name) << "no name is made up";
    replan();
    // The chosen mark is still chosen, whatever its rank is now.
    const marks::Mark* chosen = tomorrow::chosenMark(desk_->context);
    ASSERT_NE(chosen, nullptr);
    EXPECT_TRUE(chosen->isPinned);
    EXPECT_LT(geo::distance_m(chosen->place, mark.place), 1.0);
    button("Let go").click();
    EXPECT_TRUE(desk_->open.water()->pinnedMarks.empty());
}

TEST_F(TomorrowSteps, APlaceOfTheUsersOwnIsPinnedWhereHePoints) {
    button("Add own mark").click();
    EXPECT_EQ(desk_->chart.prompt(), "Point at the place to pin");
    desk_->chart.give(chart::PointMade{{30.0, -20.0}});
    EXPECT_FALSE(desk_->chart.isAsking());
    ASSERT_EQ(desk_->open.water()->pinnedMarks.size(), 1U);
    const auto& frame = *desk_->open.water()->frame;
    const geo::WaterPoint at = frame.toWater(desk_->open.water()->pinnedMarks[0].place);
    EXPECT_NEAR(at.x_m, 30.0, 1e-6);
    EXPECT_NEAR(at.y_m, -20.0, 1e-6);
    EXPECT_EQ(desk_->open.water()->pinnedMarks[0].name, "");
}

TEST_F(TomorrowSteps, AMarkDraggedOnTheChartIsPinnedThereAndMovedAgain) {
    desk_->day->hand().drop({2, chart::LiePart::Kind::boat, 0}, {44.0, 12.0});
    ASSERT_EQ(desk_->open.water()->pinnedMarks.size(), 1U);
    const auto& frame = *desk_->open.water()->frame;
    geo::WaterPoint at = frame.toWater(desk_->open.water()->pinnedMarks[0].place);
    EXPECT_NEAR(at.x_m, 44.0, 1e-6);
    EXPECT_NEAR(at.y_m, 12.0, 1e-6);
    desk_->day->hand().drop({9, chart::LiePart::Kind::boat, 0}, {0.0, 0.0});
    EXPECT_EQ(desk_->open.water()->pinnedMarks.size(), 1U) << "there is no such mark";
}

TEST_F(TomorrowSteps, APinIsFoundWhereTheRankingTurnedItALittle) {
    water::Water water = *desk_->open.water();
    marks::Mark mark = planned().marks[0];
    const auto off = [&](double east_m) {
        return water.frame->toEarth({mark.place.x_m + east_m, mark.place.y_m});
    };
    mark.isPinned = true;
    water.pinnedMarks = {{"far", off(1.2)}, {"near", off(0.8)}};
    EXPECT_EQ(tomorrow::pinnedPlaceOf(water, mark), off(0.8));
    water.pinnedMarks.pop_back();
    EXPECT_EQ(tomorrow::pinnedPlaceOf(water, mark), mark.lonLat);
    mark.isPinned = false;
    water.pinnedMarks = {{"near", off(0.8)}};
    EXPECT_EQ(tomorrow::pinnedPlaceOf(water, mark), mark.lonLat);
}

TEST_F(TomorrowSteps, TheChosenMarkIsThatOfTheChartElseTheBest) {
    desk_->chart.selectMark(3);
    EXPECT_EQ(tomorrow::chosenMark(desk_->context)->rank, 3);
    desk_->chart.selectMark(77);
    EXPECT_EQ(tomorrow::chosenMark(desk_->context)->rank, 1);
    desk_->chart.selectMark(std::nullopt);
    EXPECT_EQ(tomorrow::chosenMark(desk_->context)->rank, 1);
}

TEST_F(TomorrowSteps, MarksAreOnTheChartWhileTheDayIsShownAndPlannedAnewAfterAChange) {
    using chart::LayerKind;
    desk_->day->show();
    EXPECT_TRUE(desk_->chart.content().shown.contains(LayerKind::marks));
    edits::setPlan(desk_->open, "Set", [](marks::Plan& plan) { plan.count = 2; });
    EXPECT_TRUE(QTest::qWaitFor([&] { return planned().marks.size() == 2; }, 20000));
    EXPECT_TRUE(desk_->open.isPlanCurrent());
    desk_->day->hide();
    EXPECT_FALSE(desk_->chart.content().shown.contains(LayerKind::marks));
}

TEST_F(TomorrowSteps, APlanOlderThanTheLastChangeIsMarkedInEveryStepThatShowsIt) {
    const auto isMarked = [] {
        return isOld(marksStep) && isOld(anchorsStep) && isOld(orderStep) && isOld(sheetStep);
    };
    EXPECT_FALSE(isOld(marksStep) || isOld(sheetStep) || tableWith("Score")->isFaint());
    EXPECT_FALSE(desk_->chart.content().age.isPlanOld);
    edits::setPlan(desk_->open, "Set", [](marks::Plan& plan) { plan.tackle.scope = 6.5; });
    EXPECT_TRUE(isMarked());
    EXPECT_TRUE(tableWith("Score")->isFaint());
    EXPECT_TRUE(desk_->chart.content().age.isPlanOld);
    EXPECT_EQ(timesSaid("Older than your last change."), 3) << "of list, day and sheet";
    bool wasBeingMade = false;
    const auto heard = QObject::connect(
        &desk_->open.jobs(), &jobs::JobRunner::started, &desk_->chart, [&wasBeingMade] {
            wasBeingMade = desk_->chart.content().age.isBeingMadeAnew &&
                           says("Older than your last change: being worked out anew.");
        });
    desk_->open.planTomorrow();
    desk_->open.jobs().finishAll();
    QObject::disconnect(heard);
    EXPECT_TRUE(wasBeingMade);
    EXPECT_FALSE(isOld(marksStep) || isOld(anchorsStep) || isOld(orderStep) || isOld(sheetStep));
    EXPECT_FALSE(tableWith("Score")->isFaint());
    EXPECT_FALSE(desk_->chart.content().age.isPlanOld);
    EXPECT_FALSE(says("Older than your last change."));
}

TEST_F(TomorrowSteps, ThePaperIsChosenByItsName) {
    auto* size = &named<QComboBox>("Paper");
    EXPECT_EQ(size->itemText(0), "A4");
    EXPECT_EQ(size->itemData(0).toInt(), static_cast<int>(QPageSize::A4));
    EXPECT_EQ(size->itemText(1), "Letter");
    EXPECT_EQ(size->itemData(1).toInt(), static_cast<int>(QPageSize::Letter));
    size->setCurrentIndex(1);
    EXPECT_EQ(states()[sheetStep], "One sheet, Letter, black and white");
    size->setCurrentIndex(0);
}

} // namespace
