// SPDX-License-Identifier: GPL-3.0-or-later
#include "app/jobs/job_runner.h"

#include <QCoreApplication>
#include <QElapsedTimer>
#include <QMetaObject>

#include <algorithm>
#include <mutex>
#include <utility>

namespace jobs {

namespace {

/// Tells the window at most every 50 ms, so that a chatty job does not drown it.
class TellingProgress : public base::Progress {
public:
    TellingProgress(std::atomic<bool>& stop, std::function<void(QString, double)> teller)
        : stop_(stop), teller_(std::move(teller)) {
        sinceTold_.start();
    }
    void begin(std::string_view part) override {
        const std::lock_guard lock(mutex_);
        part_ = QString::fromUtf8(part.data(), static_cast<qsizetype>(part.size()));
        teller_(part_, 0.0);
    }
    void tell(double share) override {
        const std::lock_guard lock(mutex_);
        if (sinceTold_.elapsed() >= 50) {
            sinceTold_.restart();
            teller_(part_, std::clamp(share, 0.0, 1.0));
        }
    }
    [[nodiscard]] bool stopAsked() const override { return stop_; }

private:
    std::atomic<bool>& stop_;
    std::function<void(QString, double)> teller_;
    std::mutex mutex_;
    QString part_;
    QElapsedTimer sinceTold_;
};

} // namespace

struct JobRunner::Job {
    QString title;
    std::function<Homecoming(base::Progress&)> body;
    Homecoming cancelled; ///< For a job that never runs.
    std::atomic<bool> stop = false;
    bool isReplaced = false;
};

JobRunner::JobRunner(QObject* parent) : QObject(parent) {
    pool_.setMaxThreadCount(1);
}

JobRunner::~JobRunner() {
    waiting_.clear();
    if (current_) {
        current_->stop = true;
    }
    pool_.waitForDone();
}

void JobRunner::cancelAll() {
    // Whoever waits for one of them must hear of it, but not in the middle of asking for this.
    for (const auto& job : std::exchange(waiting_, {})) {
        QMetaObject::invokeMethod(
            this, [job] { job->cancelled(); }, Qt::QueuedConnection);
    }
    if (current_) {
        current_->stop = true;
    }
}

bool JobRunner::hasJob(const QString& title) const {
    const auto isIt = [&](const auto& job) { return job->title == title; };
    return (current_ && isIt(current_) && !current_->isReplaced) ||
           std::ranges::any_of(waiting_, isIt);
}

void JobRunner::finishAll() {
    while (current_ || !waiting_.empty()) {
        startNext(); // What a job brought home may be what waits here for the next one.
        QCoreApplication::processEvents(QEventLoop::ExcludeUserInputEvents |
                                        QEventLoop::WaitForMoreEvents);
    }
}

void JobRunner::stopEarlier(const QString& title) {
    std::erase_if(waiting_, [&](const auto& job) { return job->title == title; });
    if (current_ && current_->title == title) {
        current_->stop = true;
        current_->isReplaced = true;
    }
}

void JobRunner::enqueue(const QString& title, Earlier earlier,
                        std::function<Homecoming(base::Progress&)> body, Homecoming cancelled) {
    if (earlier == Earlier::replaced) {
        stopEarlier(title);
    }
    auto job = std::make_shared<Job>();
    job->title = title;
    job->body = std::move(body);
    job->cancelled = std::move(cancelled);
    waiting_.push_back(std::move(job));
    startNext();
}

void JobRunner::startNext() {
    if (current_ || waiting_.empty()) {
        return;
    }
    current_ = waiting_.front();
    waiting_.erase(waiting_.begin());
    emit started(current_->title);
    pool_.start([this, job = current_] {
        TellingProgress progress(job->stop, [this](const QString& part, double share) {
            QMetaObject::invokeMethod(
                this, [this, part, share] { emit told(part, share); }, Qt::QueuedConnection);
        });
        Homecoming homecoming = job->body(progress);
        // What the work held is let go before it is known to be done: a store that this thread kept
        // for another instant would keep the next one from its file.
        job->body = nullptr;
        QMetaObject::invokeMethod(
            this, [this, job, homecoming = std::move(homecoming)] { bringHome(job, homecoming); },
            Qt::QueuedConnection);
    });
}

void JobRunner::bringHome(const std::shared_ptr<Job>& job, const Homecoming& homecoming) {
    current_.reset();
    if (!job->isReplaced) {
        homecoming();
    }
    emit finished();
    startNext();
}

} // namespace jobs
