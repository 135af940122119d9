// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/caught.h"
#include "core/base/progress.h"
#include "core/base/result.h"

#include <QObject>
#include <QString>
#include <QThreadPool>

#include <atomic>
#include <functional>
#include <memory>

namespace jobs {

/// Runs core jobs on a thread of its own, one after the other, tells how far they are, stops them,
/// and brings the value home to the thread that asked. Lives in the window's thread; a job that is
/// still waiting or running when the runner goes is stopped and waited for.
class JobRunner : public QObject {
    Q_OBJECT
public:
    explicit JobRunner(QObject* parent = nullptr);
    ~JobRunner() override;

    /// What a job does: it gives a value, or the error that tells why not; an exception comes home
    /// as an error too.
    template <class T>
    using Work = std::function<base::Result<T>(base::Progress&)>;

    /// What becomes of a job of the same title that is still waiting or running.
    enum class Earlier {
        replaced, ///< It is stopped; its `then` is never called.
        finished, ///< It runs to its end first.
    };

    /// Starts `work` (in the background) and calls `then` with what it gives, in this object's
    /// thread. `title` is shown while it runs: "Drawing the water".
    template <class T>
    void start(const QString& title, Work<T> work, std::function<void(base::Result<T>)> then,
               Earlier earlier = Earlier::replaced) {
        enqueue(
            title, earlier,
            [work = std::move(work), then](base::Progress& progress) -> Homecoming {
                auto value =
                    std::make_shared<base::Result<T>>(base::caught([&] { return work(progress); }));
                return [value, then] { then(std::move(*value)); };
            },
            [then] { then(std::unexpected(base::cancelled())); });
    }

    /// True while something runs or waits for its turn.
    [[nodiscard]] bool isBusy() const { return current_ != nullptr || !waiting_.empty(); }
    /// True while a job of this title runs or waits, and what it brings will be taken.
    [[nodiscard]] bool hasJob(const QString& title) const;
    /// Stops what is running; what waits comes home as cancelled without having run.
    void cancelAll();
    /// Waits until everything that was started is done and home. Blocks the window: for the end of
    /// the program.
    void finishAll();

signals:
    void started(const QString& title);
    void told(const QString& part, double share);
    void finished();

private:
    using Homecoming = std::function<void()>;
    struct Job;
    void enqueue(const QString& title, Earlier earlier,
                 std::function<Homecoming(base::Progress&)> body, Homecoming cancelled);
    void stopEarlier(const QString& title);
    void startNext();
    void bringHome(const std::shared_ptr<Job>& job, const Homecoming& homecoming);

    QThreadPool pool_;
    std::vector<std::shared_ptr<Job>> waiting_;
    std::shared_ptr<Job> current_;
};

} // namespace jobs
