// SPDX-License-Identifier: GPL-3.0-or-later
// The window answers while it works. How long that takes at most is measured by bench_desk; here
// each work is done twice: in the way of the window's thread, when nobody is answered, and as the
// window does it.
#include "tests/app/window/window_case.h"

#include "app/edits/change_stay.h"
#include "app/edits/change_water.h"
#include "core/logbook/log_sum.h"
#include "core/water/steps/bring_in.h"
#include "core/water/steps/derive.h"
#include "tests/app/support/desk_water.h"
#include "tests/app/support/watchdog.h"
#include "tests/support/lattice_survey.h"

#include <QTest>

#include <functional>

namespace {

using support::Watchdog;
using window_case::Window;

class Answers : public Window {
protected:
    void SetUp() override {
        Window::SetUp();
        window_->resize(1000, 700);
        window_->show();
    }
    /// Runs the event loop until nothing is being done any more.
    void settle() {
        auto* survey = window_->findChild<days::survey_day::SurveyDay*>();
        while (open().jobs().isBusy() || open().keeper().isKeeping() || survey->isTakingFiles()) {
            QCoreApplication::processEvents(QEventLoop::WaitForMoreEvents);
        }
        canvas().finishPainting();
        QCoreApplication::processEvents();
    }
    void lay(water::Water water) {
        const std::vector<water::Part> all(water::allParts.begin(), water::allParts.end());
        edits::change(open(), "Lay", all, [&](water::Water& now) { now = std::move(water); });
        settle();
    }
    /// How many were answered while `work` ran on the window's thread.
    static int answersInTheWayOf(const std::function<void()>& work) {
        Watchdog watchdog;
        EXPECT_TRUE(QTest::qWaitFor([&] { return watchdog.seen().answers > 0; }));
        watchdog.reset();
        work();
        return watchdog.seen().answers;
    }
    /// How many were until what `work` began was done.
    int answersDuring(const std::function<void()>& work) {
        settle();
        const Watchdog watchdog;
        work();
        settle();
        return watchdog.seen().answers;
    }
    static Watchdog::Clock::duration timed(const std::function<void()>& work) {
        const auto start = Watchdog::Clock::now();
        work();
        return Watchdog::Clock::now() - start;
    }
};

constexpr int many = 10;

TEST(TheWatchdog, SeesWhatKeepsItsThreadFromAnswering) {
    using namespace std::chrono_literals;
    Watchdog watchdog;
    ASSERT_TRUE(QTest::qWaitFor([&] { return watchdog.seen().answers > 3; }));
    watchdog.reset();
    while (watchdog.seen().longest < 140ms) { // before it is answered
        std::this_thread::yield();
    }
    QCoreApplication::processEvents();
    EXPECT_GE(watchdog.seen().longest, 140ms);
    watchdog.reset();
    EXPECT_EQ(watchdog.seen().answers, 0);
    ASSERT_TRUE(QTest::qWaitFor([&] { return watchdog.seen().answers > 3; }));
}

TEST_F(Answers, WhileFilesAreBroughtIn) {
    const QString log = folder_.filePath("day.nmea");
    support::LatticeSurvey(30'000).writeLog(log.toStdString());
    EXPECT_EQ(answersInTheWayOf([&] {
                  base::Progress quiet;
                  ASSERT_TRUE(water::bringInDay(*open().water(), log.toStdString(), {}, quiet));
              }),
              0);
    EXPECT_GT(answersDuring(
                  [&] { window_->findChild<days::survey_day::SurveyDay*>()->takeFiles({log}); }),
              many);
    EXPECT_FALSE(open().water()->days.empty());
}

TEST_F(Answers, WhileTheWaterIsDrawnAndPlanned) {
    lay(support::deskWater(4'000, 100));
    EXPECT_EQ(answersInTheWayOf([&] {
                  base::Progress quiet;
                  ASSERT_TRUE(water::derive(*open().water(), {}, water::Step::sections, quiet));
              }),
              0);
    EXPECT_GT(answersDuring([&] { open().drawAfresh(); }), many);
    EXPECT_TRUE(open().isCurrent(water::Step::sections));
    EXPECT_GT(answersDuring([&] { open().planTomorrow(); }), many);
    EXPECT_TRUE(open().isPlanCurrent());
}

/// What a change does on the window's thread is less than going through the log once.
TEST_F(Answers, WhileALongLogIsTypedInto) {
    lay(support::deskWater(1'000, 100'000));
    window_->showDay(2);
    QCoreApplication::processEvents();
    const logbook::KeptLog log = open().water()->log;
    auto walked = Watchdog::Clock::duration::max();
    auto typed = walked;
    // Of some tries the best: what else the machine does must not count.
    for (int time = 0; time < 5; ++time) {
        open().jobs().cancelAll();
        open().jobs().finishAll();
        walked = std::min(walked, timed([&] {
                              const logbook::Log copy = log.copied();
                              EXPECT_EQ(logbook::LogSum::of(copy, {}).whole().stays, 100'000U);
                          }));
        typed = std::min(typed, timed([&] {
                             edits::changeStay(open(), "Change rods", log.back().id,
                                               [](logbook::Stay& stay) {
                                                   stay.rods = stay.rods.value_or(0) % 3 + 1;
                                               });
                             QCoreApplication::sendPostedEvents(nullptr, QEvent::MetaCall);
                         }));
    }
    EXPECT_LT(typed, walked);
    open().jobs().cancelAll();
}

} // namespace
