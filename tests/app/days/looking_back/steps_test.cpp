// SPDX-License-Identifier: GPL-3.0-or-later
// Looking back at the desk: rows and labels to the figure, and each button on the chosen stay
// alone.
#include "app/days/chart_link.h"
#include "app/days/looking_back/log_view.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/looking_back/produced_view.h"
#include "app/days/refresher.h"
#include "app/days/step_panel.h"
#include "app/edits/add_stays.h"
#include "app/edits/change_stay.h"
#include "app/edits/change_water.h"
#include "app/edits/set_plan.h"
#include "app/edits/set_shoreline.h"
#include "app/open_water/now.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/entry_line.h"
#include "app/widgets/plain_table.h"
#include "core/water/document/chosen_scale.h"
#include "core/water/questions/review_log.h"
#include "tests/app/days/autumn_log.h"
#include "tests/support/bowl.h"

#include <gtest/gtest.h>

#include <QCheckBox>
#include <QComboBox>
#include <QLabel>
#include <QPushButton>
#include <QTemporaryDir>
#include <QTest>

#include <algorithm>
#include <stdexcept>

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
    QComboBox& box(const QString& name) {
        for (QComboBox* one : day_->findChildren<QComboBox*>()) {
            if (one->accessibleName() == name) {
                return *one;
            }
        }
        throw std::logic_error("no box " + name.toStdString());
    }
    QCheckBox& tick(const QString& beginning) {
        for (QCheckBox* one : day_->findChildren<QCheckBox*>()) {
            if (one->text().contains(beginning)) {
                return *one;
            }
        }
        throw std::logic_error("no tick " + beginning.toStdString());
    }
    /// Shows what has changed now, and not with the next turn.
    void turn() {
        settle();
        day_->findChild<days::Refresher*>()->finish();
    }
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
    widgets::EntryLine& line(const QString& name) {
        for (auto* one : day_->findChildren<widgets::EntryLine*>()) {
            if (one->accessibleName() == name && !one->isHidden() &&
                !one->parentWidget()->isHidden()) {
                return *one;
            }
        }
        throw std::logic_error("no line " + name.toStdString());
    }
    /// Types a line and those after it that are left empty, up to the end where there is one.
    void fill(const QString& name, const QString& text) {
        widgets::EntryLine& first = line(name);
        QTest::keyClicks(&first, text);
        QTest::keyClick(&first, Qt::Key_Return);
        if (name == "Time") {
            for (const char* next : {"Species", "Weight"}) {
                for (auto* one : day_->findChildren<widgets::EntryLine*>()) {
                    if (one->accessibleName() == next && !one->isHidden() &&
                        !one->parentWidget()->isHidden()) {
                        QTest::keyClick(one, Qt::Key_Return);
                        break;
                    }
                }
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

// Latest first. Rows 0 and 7 are the headings of the two days; 1, 3 and 8 are stays, the others
// their runs.
constexpr int rowOfLast = 1;
constexpr int rowOfSecond = 3;
constexpr int rowOfFirst = 8;

TEST_F(LookingBack, RemovesTheChosenStayOrRunAndNoOtherAndCanUndoIt) {
    const logbook::Log before = log();
    for (const int row : {1, 2, 3, 4, 5, 6, 8}) {
        for (const bool isByKey : {false, true}) {
            PlainTable* stays = table("Stay");
            stays->clearSelection();
            stays->selectRow(row);
            if (isByKey) {
                QTest::keyClick(stays, Qt::Key_Delete);
            } else {
                button("Remove")->click();
            }
            turn();
            logbook::Log expected = before;
            if (row == rowOfLast) {
                expected.erase(expected.begin() + 2);
            } else if (row == 2) {
                expected[2].runs.clear();
            } else if (row == rowOfSecond) {
                expected.erase(expected.begin() + 1);
            } else if (row == rowOfFirst) {
                expected.erase(expected.begin());
            } else {
                expected[1].runs.erase(expected[1].runs.begin() + (row - 4));
            }
            EXPECT_EQ(log(), expected) << row;
            open_.undoStack().undo();
            turn();
            EXPECT_EQ(log(), before) << row;
            EXPECT_EQ(stays->chosen(), row) << "undo keeps the selection";
        }
    }
}

TEST_F(LookingBack, HeadingsCannotBeChosen) {
    PlainTable* stays = table("Stay");
    EXPECT_EQ(stays->lookOf(0), widgets::RowLook::heading);
    EXPECT_EQ(stays->words(0, 0), "Sat 3 Oct 2026");
    stays->selectRow(0);
    EXPECT_EQ(stays->chosen(), -1);
    stays->selectRow(6);
    QTest::keyClick(stays, Qt::Key_Down);
    EXPECT_EQ(stays->chosen(), rowOfFirst) << "the heading is passed over";
}

TEST_F(LookingBack, ShowsOneTripAlone) {
    QComboBox& trip = box("Trip");
    ASSERT_EQ(trip.count(), 3);
    EXPECT_EQ(trip.itemText(0), "all 2 trips");
    trip.setCurrentIndex(trip.findText("Wed 30 Sep 2026"));
    EXPECT_EQ(cellsOf(*table("Stay")),
              (std::vector<QStringList>{{"Wed 30 Sep 2026", "", ""},
                                        {"08:00–10:00", "1, roach", "blank"}}));
    // What is chosen elsewhere is not out of sight.
    chart_.selectStay(log()[1].id);
    turn();
    EXPECT_EQ(trip.currentIndex(), 0);
    EXPECT_EQ(table("Stay")->chosen(), rowOfSecond);
}

TEST_F(LookingBack, ButtonsWaitForAStayToBeChosen) {
    table("Stay")->clearSelection();
    for (const char* words : {"Fish", "Lost run", "Remove", "Move…"}) {
        EXPECT_FALSE(button(words)->isEnabled()) << words;
    }
    table("Stay")->selectRow(rowOfSecond);
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
        table("Stay")->selectRow(rowOfFirst); // The blank of September.
        button(isLanded ? "Fish" : "Lost run")->click();
        EXPECT_EQ(log(), before) << "its time is not said yet";
        fill("Time", "0900");
        turn();
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
        EXPECT_EQ(table("Stay")->chosen(), rowOfFirst + 1); // The new one.
        open_.undoStack().undo();
        turn();
        EXPECT_EQ(log(), before);
        EXPECT_EQ(table("Stay")->chosen(), rowOfFirst) << "its stay stays chosen";
    }
}

TEST_F(LookingBack, OffersAStayOfTodayAndWritesNothingThatNobodyTyped) {
    edits::setPlan(open_, "Set day", [](marks::Plan& plan) {
        plan.day.day = units::dayFrom("2037-10-03").value();
        plan.day.waterTemperature = units::Temperature::celsius(9);
    });
    const logbook::Log before = log();
    button("Add stay")->click();
    chart_.give(chart::PointMade{{40.0, -30.0}});
    EXPECT_EQ(log(), before);
    EXPECT_EQ(line("Day").text(), QString::fromStdString(units::isoText(
                                      open_.water()->clock.dayOf(open_water::now()))));
    for (const char* name : {"From", "To", "Rods", "Bait"}) {
        EXPECT_EQ(line(name).text(), "") << name;
        EXPECT_EQ(line(name).offered(), "") << name;
    }
    line("Day").setText("3/10/26");
    EXPECT_EQ(line("From").offered(), "13:00") << "when the last one of that day ended";
    EXPECT_EQ(line("Rods").offered(), "3");
    fill("From", "1400");
    line("To").setText("1500");
    QTest::keyClick(&line("To"), Qt::Key_Return, Qt::ControlModifier);
    turn();
    ASSERT_EQ(log().size(), 4U);
    const logbook::Stay added = log()[3];
    EXPECT_EQ(added.start, at("2026-10-03 14:00"));
    EXPECT_FALSE(added.rods);
    EXPECT_TRUE(added.isBlank());
    EXPECT_EQ(added.conditions, logbook::Conditions());
    EXPECT_EQ(chart_.content().selection.stay, added.id);
    EXPECT_EQ(table("Stay")->chosen(), 1);
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
    table("Stay")->selectRow(rowOfFirst);
    EXPECT_EQ(said(), "");
    edits::change(open_, "Set rules", {water::Part::houseRules},
                  [](water::Water& w) { w.houseRules.rodLimit = 2; });
    table("Stay")->clearSelection();
    table("Stay")->selectRow(rowOfLast);
    EXPECT_EQ(said(), "3 rods, where the house allows 2.");
    edits::changeStay(open_, "Change", log()[1].id,
                      [](logbook::Stay& stay) { stay.end = at("2026-10-03 11:30"); });
    table("Stay")->clearSelection();
    table("Stay")->selectRow(rowOfLast);
    EXPECT_TRUE(said().contains("Another stay lasted from 08:10 to 11:30")) << said().toStdString();
}

TEST_F(LookingBack, MovesTheChosenStayAndNoOther) {
    const logbook::Log before = log();
    table("Stay")->selectRow(rowOfSecond);
    button("Move…")->click();
    table("Stay")->selectRow(rowOfFirst); // What was asked for stays asked for.
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
        box("By").setCurrentText(looking_back::titleOf(row.by));
        box("Species").setCurrentIndex(std::max(0, box("Species").findData(QString(row.species))));
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
        const wording::Words words;
        std::vector<QStringList> cells;
        for (const auto& each :
             looking_back::rowsThatMatter(*expected, row.by, *open_.water(),
                                          water::bandsOf(*open_.water(), open_.derived()), words)) {
            if (each.isTried()) {
                cells.push_back(looking_back::producedCells(each.counted, each.name));
            }
        }
        cells.push_back(looking_back::producedCells(expected->overall, "all"));
        EXPECT_EQ(cellsOf(*table("Where")), cells) << std::string(nameOf(row.by));
        QStringList notes;
        for (const std::string& note : expected->notes) {
            notes += QString::fromStdString(note);
        }
        EXPECT_TRUE(says(notes.join('\n'))) << notes.join('\n').toStdString();
        EXPECT_EQ(day_->steps().stateOf(3),
                  QStringLiteral("%1 fish per 10 rod-hours")
                      .arg(looking_back::rateWords(expected->overall.rate)));
    }
}

TEST_F(LookingBack, TheChartShowsWhatIsAskedAboutAndNothingElse) {
    EXPECT_FALSE(chart_.content().logAsked);
    box("Species").setCurrentIndex(box("Species").findData("pike"));
    type("At least", "5");
    box("Bait").setCurrentIndex(box("Bait").findData("smelt"));
    box("Season").setCurrentText("autumn, Sep to Nov");
    type("From day", "3/10/26");
    ASSERT_TRUE(chart_.content().logAsked);
    const water::ReviewQuestion asked = *chart_.content().logAsked;
    EXPECT_EQ(asked.species, "pike");
    EXPECT_EQ(asked.leastWeight, units::Weight::kilograms(5.0));
    EXPECT_EQ(asked.bait, "smelt");
    EXPECT_EQ(asked.season,
              (logbook::Season{std::chrono::September / 1, std::chrono::November / 30}));
    EXPECT_EQ(asked.from, units::dayFrom("2026-10-03"));
    EXPECT_FALSE(asked.to);
    // Another water begins with all of its log.
    ASSERT_TRUE(open_.create(folder_.filePath("other.gpkg"), "Other Water"));
    turn();
    EXPECT_FALSE(chart_.content().logAsked);
    EXPECT_EQ(box("Season").currentText(), "all year");
    EXPECT_EQ(box("Species").currentIndex(), 0);
    for (auto* field : day_->findChildren<widgets::AmountField*>()) {
        if (field->accessibleName() == "From day" || field->accessibleName() == "At least") {
            EXPECT_EQ(field->text(), "") << field->accessibleName().toStdString();
        }
    }
}

TEST_F(LookingBack, WinterEndsWithTheLastOfFebruary) {
    const std::vector<std::pair<const char*, logbook::Season>> seasons{
        {"spring, Mar to May", {std::chrono::March / 1, std::chrono::May / 31}},
        {"summer, Jun to Aug", {std::chrono::June / 1, std::chrono::August / 31}},
        {"autumn, Sep to Nov", {std::chrono::September / 1, std::chrono::November / 30}},
        {"winter, Dec to Feb", {std::chrono::December / 1, std::chrono::February / 29}}};
    for (const auto& [name, season] : seasons) {
        box("Season").setCurrentText(name);
        EXPECT_EQ(chart_.content().logAsked->season, season) << name;
    }
    box("Season").setCurrentText("all year");
    EXPECT_FALSE(chart_.content().logAsked);
}

TEST_F(LookingBack, CannotSortByPlaceBeforeTheWaterIsDrawn) {
    for (const char* by : {"section", "kind of place", "depth"}) {
        box("By").setCurrentText(by);
        settle();
        EXPECT_TRUE(says("Draw the water up to its sections first.")) << by;
        EXPECT_EQ(day_->steps().stateOf(3), "not counted yet");
    }
}

TEST_F(LookingBack, SaysTheBestHourAndTheSeason) {
    EXPECT_EQ(day_->steps().stateOf(2), "2 trips, 3 stays, 3 fish");
    EXPECT_EQ(day_->steps().stateOf(5), "2 months");
    EXPECT_EQ(cellsOf(*table("Month")), looking_back::seasonRows(LogSum::of(log(), {})));
    base::Progress progress;
    const auto hours = water::reviewHours(*open_.water(), {}, progress);
    ASSERT_TRUE(hours);
    EXPECT_EQ(day_->steps().stateOf(4), looking_back::bestHoursWords(*hours));
    EXPECT_TRUE(day_->steps().stateOf(4).contains("by 2 trips")) << "two trips are not many";
    EXPECT_TRUE(
        says("Fish per 10 rod-hours by the hour of the day, with the band in which the rate "
             "may lie; from 2 trips. Hours that were not fished are left out."));
}

} // namespace
