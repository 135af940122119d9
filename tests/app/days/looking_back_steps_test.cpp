// SPDX-License-Identifier: GPL-3.0-or-later
// Looking back at the desk: rows and labels to the figure, and each button on the chosen stay
// alone.
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/edits/add_stays.h"
#include "app/edits/change_stay.h"
#include "app/edits/change_water.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "app/open_water/now.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/plain_table.h"
#include "core/water/questions/review_log.h"
#include "tests/app/days/autumn_log.h"
#include "tests/support/bowl.h"

#include <gtest/gtest.h>

#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>

namespace looking_back = days::looking_back;
using autumn::at;
using logbook::LogSum;
using preferences::UnitSystem;
using widgets::PlainTable;

namespace {

class LookingBack : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
        ASSERT_TRUE(edits::setShoreline(open_, support::bowlShore()));
        preferences_.setUnits(UnitSystem::metric);
        edits::addStays(open_, "Add stays", autumn::log());
        day_ = std::make_unique<looking_back::LookingBackDay>(context_);
        settle();
    }
    void settle() { open_.jobs().finishAll(); }

    /// The table that has a column of this name.
    PlainTable* table(const QString& column) {
        for (PlainTable* one : day_->findChildren<PlainTable*>()) {
            for (int i = 0; i < one->columnCount(); ++i) {
                if (one->headingOf(i) == column) {
                    return one;
                }
            }
        }
        return nullptr;
    }
    static std::vector<QStringList> cellsOf(const PlainTable& table) {
        std::vector<QStringList> rows;
        for (int row = 0; row < table.rowCount(); ++row) {
            rows.emplace_back();
            for (int column = 0; column < table.columnCount(); ++column) {
                rows.back() += table.words(row, column);
            }
        }
        return rows;
    }
    QPushButton* button(const QString& words) {
        for (QPushButton* one : day_->findChildren<QPushButton*>()) {
            if (one->text() == words) {
                return one;
            }
        }
        return nullptr;
    }
    QComboBox* box(int number) { return day_->findChildren<QComboBox*>().at(number); }
    void type(const QString& name, const QString& text) {
        for (auto* field : day_->findChildren<widgets::AmountField*>()) {
            if (field->accessibleName() == name) {
                field->setFocus();
                field->selectAll();
                QTest::keyClick(field, Qt::Key_Delete);
                QTest::keyClicks(field, text);
                QTest::keyClick(field, Qt::Key_Return);
            }
        }
    }
    bool says(const QString& words) {
        return std::ranges::any_of(day_->findChildren<QLabel*>(),
                                   [&](const QLabel* one) { return one->text() == words; });
    }
    [[nodiscard]] logbook::Log log() const { return open_.water()->log.copied(); }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::DayContext context_{open_, preferences_, chart_};
    std::unique_ptr<looking_back::LookingBackDay> day_;
};

TEST_F(LookingBack, RemovesTheChosenStayOrRunAndNoOtherAndCanUndoIt) {
    const logbook::Log before = log();
    // Latest first: rows 0, 2 and 6 are stays, the others their runs.
    for (int row = 0; row < 7; ++row) {
        for (const bool isByKey : {false, true}) {
            PlainTable* stays = table("Stay");
            stays->clearSelection();
            stays->selectRow(row);
            if (isByKey) {
                QTest::keyClick(stays, Qt::Key_Delete);
            } else {
                button("Remove")->click();
            }
            logbook::Log expected = before;
            if (row == 0) {
                expected.erase(expected.begin() + 2);
            } else if (row == 1) {
                expected[2].runs.clear();
            } else if (row == 2) {
                expected.erase(expected.begin() + 1);
            } else if (row == 6) {
                expected.erase(expected.begin());
            } else {
                expected[1].runs.erase(expected[1].runs.begin() + (row - 3));
            }
            EXPECT_EQ(log(), expected) << row;
            open_.undoStack().undo();
            EXPECT_EQ(log(), before) << row;
        }
    }
}

TEST_F(LookingBack, ButtonsWaitForAStayToBeChosen) {
    table("Stay")->clearSelection();
    for (const char* words : {"Fish", "Lost run", "Remove", "Move…"}) {
        EXPECT_FALSE(button(words)->isEnabled()) << words;
    }
    table("Stay")->selectRow(2);
    for (const char* words : {"Fish", "Lost run", "Remove", "Move…"}) {
        EXPECT_TRUE(button(words)->isEnabled()) << words;
    }
    EXPECT_EQ(chart_.content().selection.stay, log()[1].id);
    EXPECT_TRUE(button("Add stay")->isEnabled());
}

TEST_F(LookingBack, AddsAFishOrALostRunToTheChosenStay) {
    const logbook::Log before = log();
    for (const bool isLanded : {true, false}) {
        table("Stay")->clearSelection();
        table("Stay")->selectRow(6); // The blank of September.
        button(isLanded ? "Fish" : "Lost run")->click();
        ASSERT_EQ(log()[0].runs.size(), 1U);
        const logbook::Fish run = log()[0].runs[0];
        EXPECT_EQ(run.landed, isLanded);
        EXPECT_EQ(run.time, at("2026-09-30 09:00"));
        EXPECT_TRUE(run.species.empty());
        EXPECT_EQ(log()[1], before[1]);
        EXPECT_EQ(log()[2], before[2]);
        EXPECT_EQ(
            cellsOf(*table("Stay")).back(),
            (QStringList{isLanded ? "      09:00  fish" : "      09:00  lost run", "roach", ""}));
        EXPECT_EQ(table("Stay")->chosen(), 7); // The new one.
        open_.undoStack().undo();
        EXPECT_EQ(log(), before);
    }
}

TEST_F(LookingBack, AddsABlankOfTodayWhereTheUserPointsOfWhichNothingIsMadeUp) {
    edits::setPlan(open_, "Set day", [](marks::Plan& plan) {
        plan.day.day = units::dayFrom("2037-10-03").value();
        plan.day.waterTemperature = units::Temperature::celsius(9);
    });
    const logbook::Log before = log();
    button("Add stay")->click();
    const geo::WaterPoint point{40.0, -30.0};
    chart_.give(chart::PointMade{point});
    ASSERT_EQ(log().size(), 4U);
    const logbook::Stay added = log()[3];
    EXPECT_LE(added.end, open_water::now() + std::chrono::minutes(5));
    EXPECT_GT(added.end, open_water::now() - std::chrono::hours(1));
    EXPECT_FALSE(added.rods);
    EXPECT_TRUE(added.isBlank());
    const geo::WaterPoint found = open_.water()->frame->toWater(added.place);
    EXPECT_NEAR(found.x_m, 40.0, 1e-6);
    EXPECT_NEAR(found.y_m, -30.0, 1e-6);
    EXPECT_EQ(added.conditions, logbook::Conditions());
    EXPECT_EQ(cellsOf(*table("Stay"))[0][1], "rods not known");
    const auto* next = qobject_cast<widgets::AmountField*>(day_->focusWidget());
    ASSERT_NE(next, nullptr) << "the next key belongs to its times";
    EXPECT_EQ(next->accessibleName(), "From");
    EXPECT_FALSE(chart_.isAsking());
    EXPECT_EQ(chart_.content().selection.stay, added.id);
    EXPECT_EQ(table("Stay")->chosen(), 0);
    open_.undoStack().undo();
    EXPECT_EQ(log(), before);
}

TEST_F(LookingBack, SaysBesideTheFieldsWhatOfAStayCanHardlyBe) {
    const auto said = [this] {
        for (QLabel* label : day_->findChildren<QLabel*>()) {
            if (label->accessibleName() == "What can hardly be so") {
                return label->isHidden() ? QString() : label->text();
            }
        }
        return QString("no such line");
    };
    table("Stay")->selectRow(6);
    EXPECT_EQ(said(), "");
    edits::change(open_, "Set rules", {water::Part::houseRules},
                  [](water::Water& w) { w.houseRules.rodLimit = 2; });
    table("Stay")->clearSelection();
    table("Stay")->selectRow(0);
    EXPECT_EQ(said(), "3 rods, where the house allows 2.");
    edits::changeStay(open_, "Change", log()[1].id,
                      [](logbook::Stay& stay) { stay.end = at("2026-10-03 11:30"); });
    table("Stay")->clearSelection();
    table("Stay")->selectRow(0);
    EXPECT_TRUE(said().contains("Another stay lasted from 08:10 to 11:30")) << said().toStdString();
}

TEST_F(LookingBack, MovesTheChosenStayAndNoOther) {
    const logbook::Log before = log();
    table("Stay")->selectRow(2);
    button("Move…")->click();
    table("Stay")->selectRow(6); // What was asked for stays asked for.
    chart_.give(chart::PointMade{{-70.0, 20.0}});
    const geo::WaterPoint found = open_.water()->frame->toWater(log()[1].place);
    EXPECT_NEAR(found.x_m, -70.0, 1e-6);
    EXPECT_NEAR(found.y_m, 20.0, 1e-6);
    EXPECT_EQ(log()[0], before[0]);
    EXPECT_EQ(log()[2], before[2]);
    open_.undoStack().undo();
    EXPECT_EQ(log(), before);
}

TEST_F(LookingBack, SaysWhatProducedAsTheLogIsReviewed) {
    using water::ReviewBy;
    struct Asked {
        ReviewBy by;
        const char* species;
        const char* atLeast;
        const char* from;
        const char* to;
    };
    for (const Asked& row :
         {Asked{ReviewBy::bait, "", "", "", ""}, Asked{ReviewBy::hour, "pike", "", "", ""},
          Asked{ReviewBy::month, "", "5", "", ""}, Asked{ReviewBy::wind, "", "", "2026-10-03", ""},
          Asked{ReviewBy::bait, "perch", "", "", "2026-09-30"},
          Asked{ReviewBy::mark, "", "", "", ""}}) {
        box(0)->setCurrentText(QString::fromUtf8(nameOf(row.by).data()));
        box(1)->setCurrentIndex(std::max(0, box(1)->findData(QString(row.species))));
        type("At least", row.atLeast);
        type("From day", row.from);
        type("To day", row.to);
        settle();
        water::ReviewQuestion question;
        question.by = row.by;
        question.species = row.species;
        question.leastWeight =
            *row.atLeast == '\0' ? std::nullopt : std::optional(units::Weight::kilograms(5.0));
        question.from = units::dayFrom(row.from);
        question.to = units::dayFrom(row.to);
        base::Progress progress;
        const auto expected = water::reviewLog(*open_.water(), open_.derived(), question, progress);
        ASSERT_TRUE(expected);
        EXPECT_EQ(cellsOf(*table("Where")), looking_back::producedRows(*expected, wording::Words()))
            << std::string(nameOf(row.by));
        QStringList notes;
        for (const std::string& note : expected->notes) {
            notes += QString::fromStdString(note);
        }
        EXPECT_TRUE(says(notes.join('\n'))) << notes.join('\n').toStdString();
        EXPECT_EQ(day_->steps().stateOf(2),
                  QStringLiteral("%1 fish per 10 rod-hours")
                      .arg(looking_back::rateWords(expected->overall.rate)));
    }
}

TEST_F(LookingBack, CannotSortByPlaceBeforeTheWaterIsDrawn) {
    for (const char* by : {"section", "zone", "band"}) {
        box(0)->setCurrentText(by);
        settle();
        EXPECT_TRUE(says("Draw the water up to its sections first.")) << by;
        EXPECT_EQ(day_->steps().stateOf(2), "not counted yet");
    }
}

TEST_F(LookingBack, SaysTheBestHourAndTheSeason) {
    EXPECT_EQ(day_->steps().stateOf(1), "2 trips, 3 stays, 3 fish");
    EXPECT_EQ(day_->steps().stateOf(4), "2 months");
    EXPECT_EQ(cellsOf(*table("Month")), looking_back::seasonRows(LogSum::of(log(), {})));
    base::Progress progress;
    const auto hours = water::reviewHours(*open_.water(), {}, progress);
    ASSERT_TRUE(hours);
    EXPECT_EQ(day_->steps().stateOf(3), looking_back::bestHoursWords(*hours));
    EXPECT_TRUE(day_->steps().stateOf(3).contains("by 2 trips")) << "two trips are not many";
    EXPECT_TRUE(
        says("Fish per 10 rod-hours by the hour of the day, with the band in which the rate "
             "may lie; from 2 trips."));
}

} // namespace
