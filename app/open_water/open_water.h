// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"
#include "app/open_water/recently_derived.h"
#include "core/store/water_store.h"
#include "core/water/derived.h"
#include "core/water/planned_day.h"
#include "core/water/water.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace open_water {

/// The one water that is open: alone owns it, what was derived from it, its file, and what can be
/// undone. Every change comes through an edit; each is kept in the file at once, in the background.
/// Says which kind of thing changed; knows no widget.
class OpenWater : public QObject {
    Q_OBJECT
public:
    explicit OpenWater(QObject* parent = nullptr);
    ~OpenWater() override;

    /// Opens a water file, or makes a new one; what was open is closed, with all its edits kept.
    [[nodiscard]] base::Result<void> open(const QString& path);
    [[nodiscard]] base::Result<void> create(const QString& path, const QString& name);
    [[nodiscard]] bool isOpen() const { return store_ != nullptr; }
    [[nodiscard]] bool isReadOnly() const;
    [[nodiscard]] QString path() const;

    /// Never null; what is shared stays as it is when the water changes.
    [[nodiscard]] std::shared_ptr<const water::Water> water() const { return water_; }
    [[nodiscard]] const water::Derived& derived() const { return derived_; }
    /// Tomorrow as last worked out; null before that.
    [[nodiscard]] std::shared_ptr<const water::PlannedDay> planned() const { return planned_; }
    /// True where the plan, the log or the water changed since tomorrow was worked out.
    [[nodiscard]] bool isPlanStale() const { return planIsStale_; }
    /// True where `step` was made from the water as it is now.
    [[nodiscard]] bool isCurrent(water::Step step) const;

    QUndoStack& undoStack() { return undoStack_; }
    /// For progress and cancel.
    jobs::JobRunner& jobs() { return jobs_; }

    /// Makes again, in the background, whatever no longer holds, up to `step`.
    void deriveUpTo(water::Step step);
    /// Draws the water with everything chosen anew, where after small edits some was kept.
    void drawAfresh();
    /// Works out tomorrow in the background; derives first what is missing.
    void planTomorrow();
    /// Waits until every edit is in the file.
    void finishKeeping();

    /// Only for edits: swaps these parts with those of `other`, keeps them, and tells.
    void swapParts(water::Water& other, const std::vector<water::Part>& parts);

signals:
    void opened();
    void changed(const std::set<water::Part>& parts);
    void derivedChanged();
    void plannedChanged();
    /// Something went wrong in the background; one sentence for the user.
    void failed(const base::Error& error);
    /// What just happened: "Drawn in 0.8 s: 112,400 cells of 5 m".
    void happened(const QString& sentence);

private:
    void close();
    void takeStore(std::unique_ptr<store::WaterStore> store, water::Water water);
    void keep(const std::vector<water::Part>& parts);
    void keepFound();
    void loadKeptDrawing();
    void startDeriving(water::Derived before, water::Step step);
    void takeDerived(water::Derived derived);

    std::shared_ptr<store::WaterStore> store_;
    std::shared_ptr<const water::Water> water_;
    water::Derived derived_;
    RecentlyDerived recent_;
    std::shared_ptr<const water::PlannedDay> planned_;
    bool planIsStale_ = true;
    std::shared_ptr<const surface::DrawnWater> drawingKept_; ///< In the file.
    QUndoStack undoStack_;
    jobs::JobRunner jobs_;
    jobs::JobRunner keeping_;
};

} // namespace open_water
