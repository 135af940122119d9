// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/days/chart_link.h"
#include "app/days/looking_back/looking_back_day.h"
#include "app/days/step_panel.h"
#include "app/days/tomorrow/tomorrow_day.h"
#include "app/edits/add_stays.h"
#include "app/widgets/amount_field.h"
#include "app/widgets/entry_line.h"
#include "app/widgets/plain_table.h"

#include <gtest/gtest.h>

#include <QPushButton>
#include <QSlider>
#include <QTemporaryDir>
#include <QTest>

using widgets::AmountField;

namespace {

constexpr int panelWidth = 380;
/// What margins and the scroll bar leave of it.
constexpr int bodyWidth = 348;

class DayWidgets : public testing::Test {
protected:
    void SetUp() override {
        ASSERT_TRUE(open_.create(folder_.filePath("small.gpkg"), "Skarrow Water"));
    }

    template <class Widget>
    Widget* named(QWidget& day, const QString& name) {
        for (Widget* widget : day.findChildren<Widget*>()) {
            if (widget->accessibleName() == name || widget->property("text").toString() == name) {
                return widget;
            }
        }
        ADD_FAILURE() << "no " << name.toStdString();
        return nullptr;
    }

    static void type(AmountField* field, const QString& text) {
        field->setFocus();
        field->selectAll();
        QTest::keyClicks(field, text);
        QTest::keyClick(field, Qt::Key_Return);
    }

    QTemporaryDir folder_;
    open_water::OpenWater open_;
    preferences::Preferences preferences_;
    days::ChartLink chart_{open_, preferences_};
    days::DayContext context_{open_, preferences_, chart_};
};

TEST_F(DayWidgets, FitTheirPanelStepByStep) {
    days::tomorrow::TomorrowDay tomorrow(context_);
    days::looking_back::LookingBackDay back(context_);
    for (days::StepPanel* steps : {&tomorrow.steps(), &back.steps()}) {
        for (int step = 0; step < steps->count(); ++step) {
            steps->openStep(step);
            EXPECT_FALSE(steps->stateOf(step).isEmpty()) << step;
        }
        for (const auto* body : steps->findChildren<days::DayStep*>()) {
            EXPECT_LE(body->minimumSizeHint().width(), bodyWidth) << steps->openStep();
        }
    }
}

TEST_F(DayWidgets, TakeAWindTypedInAnotherUnitAndCanUndoIt) {
    days::tomorrow::TomorrowDay day(context_);
    const std::optional<units::Speed> before = open_.water()->plan.day.wind.speed;
    type(named<AmountField>(day, "Wind speed"), "12 kn");
    EXPECT_NEAR(open_.water()->plan.day.wind.speed.value().inKnots(), 12.0, 1e-9);
    open_.undoStack().undo();
    EXPECT_EQ(open_.water()->plan.day.wind.speed, before);
}

TEST_F(DayWidgets, KeepWrongInputMarkedAndLeaveThePlanAlone) {
    days::tomorrow::TomorrowDay day(context_);
    const marks::Plan before = open_.water()->plan;
    auto* cast = named<AmountField>(day, "Cast");
    type(cast, "400 m");
    EXPECT_TRUE(cast->isWrong());
    EXPECT_EQ(cast->text(), "400 m");
    EXPECT_EQ(open_.water()->plan, before);
    type(cast, "60ft");
    EXPECT_FALSE(cast->isWrong());
    EXPECT_NEAR(open_.water()->plan.tackle.cast.inFeet(), 60.0, 1e-9);
}

TEST_F(DayWidgets, WeighAFactorOnceTheHandRests) {
    days::tomorrow::TomorrowDay day(context_);
    named<QSlider>(day, "liking for calm")->setValue(40);
    EXPECT_TRUE(QTest::qWaitFor(
        [&] { return open_.water()->plan.weights.of(marks::FactorKind::shelter) == 2.0; }));
}

TEST_F(DayWidgets, PutAFishIntoAStayByHand) {
    days::looking_back::LookingBackDay day(context_);
    day.show();
    logbook::Stay stay;
    stay.start = units::Moment(std::chrono::hours(490000));
    stay.end = stay.start + std::chrono::hours(2);
    edits::addStays(open_, "Add stay", {stay});
    QCoreApplication::sendPostedEvents(nullptr, QEvent::MetaCall); // shown once a turn
    auto* table = day.findChild<widgets::PlainTable*>();
    ASSERT_NE(table, nullptr);
    days::looking_back::LookingBackDay* back = &day;
    for (auto* each : back->findChildren<widgets::PlainTable*>()) {
        if (each->accessibleName() == "Stays and fish") {
            each->selectRow(1);
        }
    }
    named<QPushButton>(day, "Fish")->click();
    EXPECT_TRUE(open_.water()->log.front().isBlank()) << "nothing is known of it yet";
    for (const auto& [name, text] : std::initializer_list<std::pair<const char*, const char*>>{
             {"Time", "1630"}, {"Species", ""}, {"Weight", "12 lb 8 oz"}}) {
        auto* line = named<widgets::EntryLine>(day, name);
        QTest::keyClicks(line, text);
        QTest::keyClick(line, Qt::Key_Return);
    }
    ASSERT_EQ(open_.water()->log.front().runs.size(), 1U);
    const auto weight = open_.water()->log.front().runs.front().weight;
    ASSERT_TRUE(weight.has_value());
    EXPECT_NEAR(weight.value_or(units::Weight()).inPounds(), 12.5, 1e-9);
}

/// Pictures of every step, for the eye: set MEREMARK_PICTURES to a folder and MEREMARK_LOOK_WATER
/// to a water file.
TEST_F(DayWidgets, ShowThemselvesOnAGivenWater) {
    const QString folder = qEnvironmentVariable("MEREMARK_PICTURES");
    if (folder.isEmpty()) {
        GTEST_SKIP() << "MEREMARK_PICTURES is not set";
    }
    ASSERT_TRUE(open_.open(qEnvironmentVariable("MEREMARK_LOOK_WATER")));
    open_.deriveUpTo(water::Step::sections);
    open_.planTomorrow();
    open_.jobs().finishAll();
    days::tomorrow::TomorrowDay tomorrow(context_);
    days::looking_back::LookingBackDay back(context_);
    open_.jobs().finishAll();
    for (auto [steps, name] : {std::pair{&tomorrow.steps(), "tomorrow"}, {&back.steps(), "back"}}) {
        steps->parentWidget()->resize(panelWidth, 900);
        steps->parentWidget()->show();
        for (int step = 0; step < steps->count(); ++step) {
            steps->openStep(step);
            open_.jobs().finishAll();
            QCoreApplication::processEvents(); // What comes into view does so with the next turn.
            EXPECT_TRUE(
                steps->grab().save(QStringLiteral("%1/%2-%3.png").arg(folder, name).arg(step)));
        }
    }
}

} // namespace
