// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"
#include "core/store/water_store.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"

#include <QObject>
#include <QString>
#include <QTimer>

#include <chrono>
#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace open_water {

/// What was found in a water, to be kept beside it; `water` is what it was found in.
struct Found {
    std::shared_ptr<const water::Water> water;
    water::Derived derived;
    std::vector<marks::Mark> marks; ///< Only those of a plan that holds.
};

/// Keeps the parts of the open water in its file, in the background, one save at a time. What could
/// not be saved stays unkept, says why, and is tried again with the next save and every few
/// seconds, until it is in the file or the user says that it may go.
class Keeper : public QObject {
    Q_OBJECT
public:
    using Store = std::unique_ptr<store::WaterStore>;
    /// Makes the file of a water that has none; called in the background, again until it worked.
    using Maker = std::function<base::Result<Store>()>;
    using Parts = std::set<water::Part>;

    explicit Keeper(QObject* parent = nullptr);

    /// From now on what is kept goes into this file, and nothing of an earlier water is unkept.
    /// \param drawing that lies in the file; null for none.
    void serve(Store store, std::shared_ptr<const surface::DrawnWater> drawing);
    /// The same for a water whose file is made with the first thing that is kept. Without a maker
    /// nothing can be kept, and all of it counts as unkept.
    void serveUnmade(Maker maker);

    /// These parts are to be in the file as they are in `water`.
    void keep(std::shared_ptr<const water::Water> water, const std::vector<water::Part>& parts);
    /// The same for what was found; it is kept once all parts are, and can be made again where it
    /// is lost.
    void keepFound(Found found);
    /// Writes all of the water into a new file, in which it is kept from then on. `whole` is asked
    /// for the water when its turn has come; `then` is called when it is done, or with the reason
    /// why the water stays where it was.
    void moveTo(const QString& path, std::function<Found()> whole,
                std::function<void(base::Result<void>)> then);
    /// Waits until what is unkept has been tried once more. \return whether all of it is in the
    /// file.
    bool finish();

    [[nodiscard]] bool hasFile() const { return store_ != nullptr; }
    [[nodiscard]] QString path() const;
    [[nodiscard]] bool isReadOnly() const { return isReadOnly_; }
    /// True where a newer version of the program keeps the file.
    [[nodiscard]] bool isOfNewerVersion() const {
        return store_ && store_->opening() == store::Opening::newer;
    }
    /// Who had the water when it was opened, so that it can only be read here.
    [[nodiscard]] std::optional<store::Owner> owner() const {
        return store_ ? store_->owner() : std::nullopt;
    }
    /// Whether somebody else has saved the water since; an error where its file is gone.
    [[nodiscard]] base::Result<bool> hasChanged() {
        return store_ ? store_->hasChanged() : base::Result<bool>(false);
    }
    /// What was changed and is not known to be in the file.
    [[nodiscard]] const Parts& unkept() const { return unkept_; }
    [[nodiscard]] bool isKeeping() const { return runner_.isBusy(); }
    /// Why what is unkept could not be kept; nothing while all goes well.
    [[nodiscard]] const std::optional<base::Error>& whyNot() const { return whyNot_; }

    /// How long to wait before what failed is tried again by itself.
    void setRetryInterval(std::chrono::milliseconds interval) { retry_.setInterval(interval); }

signals:
    /// What is unkept, or why, has changed.
    void changed();
    /// The file of a water that had none has been made.
    void fileMade();
    /// Keeping began to fail. Said once, not with each try.
    void failed(const base::Error& error);

private:
    /// What a save leaves behind: the store, made on the way where there was none.
    struct Saved {
        std::shared_ptr<store::WaterStore> store;
        std::optional<base::Error> error;
    };
    void start(std::shared_ptr<store::WaterStore> store);
    /// A water to be written into another file as soon as nothing else is being saved.
    struct Move {
        QString path;
        std::function<Found()> whole;
        std::function<void(base::Result<void>)> then;
    };
    void saveNext();
    void saveWhole(Move move);
    void takeMoved(std::shared_ptr<store::WaterStore> store,
                   std::shared_ptr<const surface::DrawnWater> drawing);
    void saveParts();
    void saveFound();
    void takeSaved(Saved saved);
    void takeSavedFound(const Found& found, const base::Result<void>& kept);
    void takeFailure(const base::Error& error);
    [[nodiscard]] bool canTry() const { return (store_ || maker_) && !isReadOnly_; }

    std::shared_ptr<store::WaterStore> store_;
    Maker maker_;
    bool isReadOnly_ = false;
    std::shared_ptr<const water::Water> latest_; ///< What the unkept parts are kept from.
    Parts unkept_;
    Parts touchedSince_; ///< Changed while the save that runs was under way.
    std::optional<base::Error> whyNot_;
    std::optional<Found> found_; ///< Not kept yet.
    std::optional<Move> move_;
    bool hasFoundFailed_ = false;
    std::shared_ptr<const surface::DrawnWater> drawingKept_; ///< In the file.
    int served_ = 0; ///< Counts waters: what comes home from an earlier one is let go.
    QTimer retry_;
    jobs::JobRunner runner_;
};

} // namespace open_water
