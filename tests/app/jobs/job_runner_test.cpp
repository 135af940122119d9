// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/jobs/job_runner.h"

#include <gmock/gmock.h>

#include <QCoreApplication>
#include <QThread>

#include <future>
#include <memory>
#include <string>
#include <vector>

namespace {

using base::Progress;
using base::Result;
using jobs::JobRunner;
using testing::ElementsAre;
using testing::UnorderedElementsAre;

class Jobs : public testing::Test {
protected:
    void SetUp() override {
        QObject::connect(runner_.get(), &JobRunner::started, [this](const QString& title) {
            said_.push_back("started " + title.toStdString());
        });
        QObject::connect(runner_.get(), &JobRunner::finished,
                         [this] { said_.emplace_back("finished"); });
    }
    /// Starts a job that gives `value`.
    void start(const QString& title, int value,
               JobRunner::Earlier earlier = JobRunner::Earlier::replaced) {
        runner_->start<int>(
            title, [value](Progress&) -> Result<int> { return value; },
            [this](Result<int> made) {
                said_.push_back("then " + (made ? std::to_string(*made) : made.error().what));
            },
            earlier);
    }
    /// Starts a job that runs until it is asked to stop.
    void startEndless(const QString& title) {
        auto running = std::make_shared<std::promise<void>>();
        runner_->start<int>(
            title,
            [running](Progress& progress) -> Result<int> {
                running->set_value();
                while (!progress.stopAsked()) {
                    QThread::yieldCurrentThread();
                }
                return std::unexpected(base::cancelled());
            },
            [this](Result<int> made) {
                said_.push_back(made ? "then a value" : "then " + made.error().what);
            });
        running->get_future().wait();
    }

    std::unique_ptr<JobRunner> runner_ = std::make_unique<JobRunner>();
    std::vector<std::string> said_;
};

TEST_F(Jobs, BringAnExceptionHomeAsAnError) {
    runner_->start<int>(
        QStringLiteral("full"), [](Progress&) -> Result<int> { throw std::bad_alloc(); },
        [this](Result<int> made) { said_.push_back(made ? "a value" : made.error().what); });
    runner_->finishAll();
    EXPECT_THAT(said_,
                ElementsAre("started full", "there is not enough memory for this", "finished"));
}

TEST_F(Jobs, RunOneAfterTheOtherInTheirOrder) {
    EXPECT_FALSE(runner_->isBusy());
    start("a", 1);
    start("b", 2);
    start("c", 3);
    EXPECT_TRUE(runner_->isBusy());
    runner_->finishAll();
    EXPECT_FALSE(runner_->isBusy());
    EXPECT_THAT(said_, ElementsAre("started a", "then 1", "finished", "started b", "then 2",
                                   "finished", "started c", "then 3", "finished"));
}

TEST_F(Jobs, MayBeWaitedForWhereAnotherComesHome) {
    runner_->start<int>(
        "a", [](Progress&) -> Result<int> { return 1; },
        [this](const Result<int>&) {
            runner_->finishAll();
            said_.emplace_back("waited");
        });
    start("b", 2);
    runner_->finishAll();
    EXPECT_THAT(said_,
                ElementsAre("started a", "started b", "then 2", "finished", "waited", "finished"));
}

TEST_F(Jobs, WorkInAnotherThreadAndComeHomeToThisOne) {
    QThread* worked = nullptr;
    QThread* home = nullptr;
    runner_->start<void>(
        "a",
        [&worked](Progress&) -> Result<void> {
            worked = QThread::currentThread();
            return {};
        },
        [&home](const Result<void>&) { home = QThread::currentThread(); });
    runner_->finishAll();
    EXPECT_EQ(home, QThread::currentThread());
    EXPECT_NE(worked, home);
}

TEST_F(Jobs, OfTheSameTitleReplaceTheOneThatRunsAndThoseThatWait) {
    startEndless("draw");
    start("draw", 1);
    start("other", 2);
    start("draw", 3);
    runner_->finishAll();
    EXPECT_THAT(said_, ElementsAre("started draw", "finished", "started other", "then 2",
                                   "finished", "started draw", "then 3", "finished"));
}

TEST_F(Jobs, OfAnotherTitleStopNothing) {
    std::promise<void> go;
    bool wasStopped = false;
    runner_->start<int>(
        "draw",
        [&](Progress& progress) -> Result<int> {
            go.get_future().wait();
            wasStopped = progress.stopAsked();
            return 1;
        },
        [this](const Result<int>&) { said_.emplace_back("then 1"); });
    start("other", 2);
    go.set_value();
    runner_->finishAll();
    EXPECT_FALSE(wasStopped);
    EXPECT_THAT(said_, ElementsAre("started draw", "then 1", "finished", "started other", "then 2",
                                   "finished"));
}

TEST_F(Jobs, ThatMustNotBeLostAllRunToTheirEnd) {
    for (int i = 1; i <= 3; ++i) {
        start("keep", i, JobRunner::Earlier::finished);
    }
    runner_->finishAll();
    EXPECT_THAT(said_, ElementsAre("started keep", "then 1", "finished", "started keep", "then 2",
                                   "finished", "started keep", "then 3", "finished"));
}

TEST_F(Jobs, ThatAreCancelledSaySoAndThoseWaitingNeverStart) {
    startEndless("draw");
    start("other", 2);
    runner_->cancelAll();
    runner_->finishAll();
    const std::string stopped = "then " + base::cancelled().what;
    EXPECT_THAT(said_, UnorderedElementsAre("started draw", stopped, "finished", stopped))
        << "whoever waited for the other one hears that it will not come";
    start("next", 3);
    runner_->finishAll();
    EXPECT_EQ(said_.size(), 7U) << "what is started later is not stopped";
    EXPECT_EQ(said_[5], "then 3");
}

TEST_F(Jobs, AreKnownByTheirTitleWhileTheirResultIsStillToCome) {
    EXPECT_FALSE(runner_->hasJob("draw"));
    startEndless("draw");
    start("other", 2);
    EXPECT_TRUE(runner_->hasJob("draw"));
    EXPECT_TRUE(runner_->hasJob("other"));
    EXPECT_FALSE(runner_->hasJob("third"));
    runner_->start<int>(
        "draw", [](Progress&) -> Result<int> { return 3; }, [](const Result<int>&) {});
    runner_->cancelAll();
    EXPECT_FALSE(runner_->hasJob("draw")) << "one replaced, the other dropped";
    runner_->finishAll();
    EXPECT_FALSE(runner_->hasJob("draw"));
}

TEST_F(Jobs, AreStoppedAndWaitedForWhenTheRunnerGoes) {
    startEndless("draw");
    start("other", 2);
    runner_.reset();
    QCoreApplication::processEvents();
    EXPECT_THAT(said_, ElementsAre("started draw"));
}

TEST_F(Jobs, StartedFromTheEndOfAnotherRunAfterThoseThatWait) {
    runner_->start<int>(
        "first", [](Progress&) -> Result<int> { return 1; },
        [this](const Result<int>&) { start("third", 3); });
    start("second", 2);
    runner_->finishAll();
    std::erase(said_, "finished");
    EXPECT_THAT(
        said_, ElementsAre("started first", "started second", "then 2", "started third", "then 3"));
}

TEST_F(Jobs, TellWhichPartTheyAreInAndHowFarBetweenNothingAndAll) {
    struct Case {
        double told;
        double shown;
    };
    for (const Case& each : {Case{0.25, 0.25}, Case{7.0, 1.0}, Case{-2.0, 0.0}}) {
        std::vector<std::pair<std::string, double>> told;
        const auto connection = QObject::connect(runner_.get(), &JobRunner::told,
                                                 [&](const QString& part, double share) {
                                                     told.emplace_back(part.toStdString(), share);
                                                     if (told.size() == 2) {
                                                         runner_->cancelAll();
                                                     }
                                                 });
        runner_->start<void>(
            "draw",
            [&each](Progress& progress) -> Result<void> {
                progress.begin("drawing the wåter");
                while (!progress.stopAsked()) {
                    progress.tell(each.told);
                }
                return {};
            },
            [](const Result<void>&) {});
        runner_->finishAll();
        QObject::disconnect(connection);
        ASSERT_GE(told.size(), 2U);
        EXPECT_EQ(told[0], std::pair(std::string("drawing the wåter"), 0.0));
        EXPECT_EQ(told[1], std::pair(std::string("drawing the wåter"), each.shown));
    }
}

TEST_F(Jobs, ThatChatterDoNotDrownTheWindow) {
    int told = 0;
    QObject::connect(runner_.get(), &JobRunner::told, [&told] { ++told; });
    runner_->start<void>(
        "draw",
        [](Progress& progress) -> Result<void> {
            for (int i = 0; i < 100'000; ++i) {
                progress.tell(i / 1e5);
            }
            return {};
        },
        [](const Result<void>&) {});
    runner_->finishAll();
    // At most one each 50 ms: that is far fewer than were told, on the slowest machine too.
    EXPECT_LT(told, 50'000);
}

} // namespace
