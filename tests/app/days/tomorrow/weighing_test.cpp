// SPDX-License-Identifier: GPL-3.0-or-later
// Sliders that rank the list while they are dragged, beliefs saved under names, and the page of
// beliefs and record.
#include "app/days/tomorrow/tomorrow_view.h"
#include "app/edits/add_stays.h"
#include "app/edits/belief_profiles.h"
#include "app/widgets/interval_bar.h"
#include "tests/app/days/tomorrow/tomorrow_desk.h"
#include "tests/support/held_job.h"

#include <QSignalSpy>
#include <QSlider>
#include <QTimer>

#include <gmock/gmock.h>

namespace {

namespace tomorrow = days::tomorrow;
using marks::FactorKind;
using testing::ElementsAre;

class LiveRanking : public support::TomorrowDesk {
protected:
    void SetUp() override { desk_->day->show(); }
    void TearDown() override {
        desk_->day->hide();
        TomorrowDesk::TearDown();
    }
    static QSlider& slider(FactorKind kind) { return named<QSlider>(tomorrow::weightTitle(kind)); }
};

TEST_F(LiveRanking, AListFollowsWhileTheSliderIsHeldDown) {
    QSlider& shelter = slider(FactorKind::shelter);
    QSignalSpy planned(&open(), &open_water::OpenWater::plannedChanged);
    shelter.setSliderDown(true);
    const int before = open().undoStack().count();
    // The hand goes on moving: a tick with every turn of the loop, until lists have come.
    int tick = 0;
    EXPECT_TRUE(QTest::qWaitFor(
        [&] {
            shelter.setValue(10 + ++tick % 20);
            return planned.count() >= 3;
        },
        20'000));
    EXPECT_TRUE(shelter.isSliderDown());
    EXPECT_EQ(open().undoStack().count(), before + 1) << "one act, however many ticks";
    shelter.setSliderDown(false);
    EXPECT_TRUE(QTest::qWaitFor([&] { return open().isPlanCurrent(); }, 20'000));
    EXPECT_EQ(this->planned().plan.weights.of(FactorKind::shelter), shelter.value() / 20.0);
}

TEST_F(LiveRanking, APlanThatIsBeingMadeIsNotBegunAnewWithATick) {
    auto* due = desk_->day->findChild<QTimer*>({}, Qt::FindDirectChildrenOnly);
    ASSERT_NE(due, nullptr);
    std::vector<double> came;
    const auto heard =
        QObject::connect(&open(), &open_water::OpenWater::plannedChanged, due, [&came] {
            came.push_back(planned().plan.weights.of(FactorKind::shelter));
        });
    QSlider& shelter = slider(FactorKind::shelter);
    shelter.setSliderDown(true);
    support::HeldJob held(open().jobs());
    shelter.setValue(11);
    ASSERT_TRUE(QTest::qWaitFor([&] { return open().isBeingMade(); }, 20'000));
    for (const int tick : {12, 13, 14}) {
        QSignalSpy rung(due, &QTimer::timeout);
        shelter.setValue(tick);
        ASSERT_TRUE(QTest::qWaitFor([&] { return rung.count() > 0; }, 20'000));
    }
    held.letGo();
    ASSERT_TRUE(QTest::qWaitFor([&] { return open().isPlanCurrent(); }, 20'000));
    QObject::disconnect(heard);
    shelter.setSliderDown(false);
    ASSERT_FALSE(came.empty());
    EXPECT_EQ(came.front(), 11 / 20.0) << "the list that was being made is shown";
    EXPECT_EQ(came.back(), 14 / 20.0);
}

TEST_F(LiveRanking, OneSliderLeavesWhatTheOthersSay) {
    edits::setPlan(open(), "x", [](marks::Plan& plan) {
        plan.weights.set(FactorKind::depth, 3.0); // Beyond the slider's end.
        plan.weights.set(FactorKind::trust, 0.3333);
        plan.tryNew = 0.777;
    });
    turn();
    QSlider& shelter = slider(FactorKind::shelter);
    shelter.setValue(31);
    const marks::Plan& plan = water().plan;
    EXPECT_EQ(plan.weights.of(FactorKind::shelter), 1.55);
    EXPECT_EQ(plan.weights.of(FactorKind::depth), 3.0);
    EXPECT_EQ(plan.weights.of(FactorKind::trust), 0.3333);
    EXPECT_EQ(plan.tryNew, 0.777);
}

TEST_F(LiveRanking, AMapThatIsOldIsNotWaitedForWithEveryTick) {
    // A change of the wind is gathered; a tick of a slider is not.
    edits::setPlan(open(), "x", [](marks::Plan& plan) {
        plan.day.wind.speed = units::Speed::metresPerSecond(8.0);
    });
    EXPECT_TRUE(QTest::qWaitFor([&] { return open().isPlanCurrent(); }, 20'000));
    EXPECT_EQ(planned().plan.day.wind.speed, units::Speed::metresPerSecond(8.0));
}

class SavedBeliefs : public support::TomorrowDesk {};

TEST_F(SavedBeliefs, AreSavedUsedRenamedAndForgotten) {
    edits::setPlan(open(), "x",
                   [](marks::Plan& plan) { plan.weights.set(FactorKind::dropOff, 1.75); });
    auto& name = named<QLineEdit>("Save as");
    EXPECT_FALSE(button("Save").isEnabled());
    name.setText(" windy autumn ");
    button("Save").click();
    EXPECT_EQ(name.text(), "");
    ASSERT_EQ(water().beliefProfiles.size(), 1U);
    EXPECT_EQ(water().beliefProfiles[0].name, "windy autumn");
    widgets::PlainTable& saved = table("Saved beliefs");
    EXPECT_EQ(saved.words(0, 0), "windy autumn");
    EXPECT_EQ(saved.words(0, 1), "in use");
    button("Usual weights").click();
    turn();
    EXPECT_EQ(saved.words(0, 1), "");
    EXPECT_FALSE(button("Use").isEnabled());
    saved.selectRow(0);
    button("Use").click();
    EXPECT_EQ(water().plan.weights.of(FactorKind::dropOff), 1.75);
    EXPECT_EQ(named<QSlider>("drop-off in reach").value(), 35);
    emit saved.typedOver(0, " gales");
    EXPECT_EQ(water().beliefProfiles[0].name, "gales");
    button("Forget").click();
    EXPECT_TRUE(water().beliefProfiles.empty());
    turn();
    EXPECT_TRUE(saved.isHidden());
}

TEST_F(SavedBeliefs, SayThatASecondSavingReplacesTheFirst) {
    edits::saveProfile(open(), "autumn");
    auto& name = named<QLineEdit>("Save as");
    name.setText("autumn");
    EXPECT_TRUE(says("Saving replaces what this name holds now."));
    name.setText("autumn 2");
    EXPECT_FALSE(says("Saving replaces what this name holds now."));
    name.clear();
}

TEST_F(SavedBeliefs, OfANameThatIsTakenAreNotNamedSo) {
    edits::saveProfile(open(), "autumn");
    edits::saveProfile(open(), "spring");
    std::vector<base::Error> told;
    const auto heard =
        QObject::connect(&open(), &open_water::OpenWater::failed,
                         [&told](const base::Error& error) { told.push_back(error); });
    turn();
    emit table("Saved beliefs").typedOver(1, "autumn");
    QObject::disconnect(heard);
    ASSERT_EQ(told.size(), 1U);
    EXPECT_EQ(water().beliefProfiles[1].name, "spring");
}

class BeliefsPage : public support::TomorrowDesk {
protected:
    static widgets::IntervalBar& bars() { return named<widgets::IntervalBar>("What the log says"); }
    /// On this page and not somewhere in the steps.
    static bool pageSays(const QString& words) {
        turn();
        return std::ranges::any_of(
            bars().parentWidget()->findChildren<QLabel*>(),
            [&](const QLabel* label) { return label->text() == words && !label->isHidden(); });
    }
};

TEST_F(BeliefsPage, WithoutALogIsByBeliefsAlone) {
    EXPECT_TRUE(pageSays("Nothing caught yet: by your beliefs alone."));
    ASSERT_EQ(planned().beliefs.size(), marks::allFactorKinds.size());
    for (const marks::BeliefRecord& record : planned().beliefs) {
        EXPECT_TRUE(pageSays(tomorrow::beliefRow(record, false)));
    }
    EXPECT_TRUE(bars().isHidden());
    EXPECT_FALSE(pageSays("Older than your last change."));
    edits::setPlan(open(), "x", [](marks::Plan& plan) { plan.tackle.scope = 4.5; });
    EXPECT_TRUE(pageSays("Older than your last change."));
}

TEST_F(BeliefsPage, WithALogHasASentenceForEachBeliefAndABarForWhatTheLogCanTell) {
    std::vector<logbook::Stay> stays;
    for (unsigned day = 1; day <= 6; ++day) {
        logbook::Stay stay;
        stay.start = water().clock.at(std::chrono::year(2025) / 10 / std::chrono::day(day),
                                      std::chrono::hours(9));
        stay.end = stay.start + std::chrono::hours(3);
        stay.place = planned().marks[day % 2].lonLat;
        stay.rods = 2;
        stay.conditions.windFrom = units::Bearing::degrees(240.0);
        stay.conditions.windSpeed = units::Speed::metresPerSecond(6.0);
        stay.runs.resize(day % 2 == 0 ? 4 : 0);
        for (logbook::Fish& fish : stay.runs) {
            fish.time = stay.start + std::chrono::minutes(20);
        }
        stays.push_back(stay);
    }
    edits::addStays(open(), "x", stays);
    replan();
    ASSERT_TRUE(planned().meanPer10RodHours);
    QStringList spoken;
    for (const marks::BeliefRecord& record : planned().beliefs) {
        EXPECT_TRUE(says(tomorrow::beliefRow(record, true)))
            << tomorrow::beliefRow(record, true).toStdString();
        if (record.log) {
            spoken += tomorrow::factorTitle(record.kind) +
                      QStringLiteral(": ×%1").arg(record.log->times, 0, 'f', 2);
        }
    }
    ASSERT_FALSE(spoken.isEmpty()) << "the wind at least was known";
    EXPECT_EQ(bars().accessibleDescription(), spoken.join("; "));
    EXPECT_FALSE(bars().isHidden());
}

TEST(BeliefRow, NamesTheBeliefBeforeItsSentence) {
    const marks::BeliefRecord record{FactorKind::dropOff, 1.0, std::nullopt, 1.0, true};
    EXPECT_EQ(tomorrow::beliefRow(record, true),
              "Drop-off in reach. You count it as usual; no stay of your log was near any.");
}

} // namespace
