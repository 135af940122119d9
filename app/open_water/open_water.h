// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"
#include "app/open_water/basis.h"
#include "app/open_water/follower.h"
#include "app/open_water/keeper.h"
#include "app/open_water/recently_derived.h"
#include "app/open_water/unnamed_waters.h"
#include "app/open_water/water_file.h"
#include "core/water/document/derived.h"
#include "core/water/document/planned_day.h"
#include "core/water/document/water.h"
#include "core/water/steps/workings.h"

#include <QObject>
#include <QString>
#include <QUndoStack>

#include <functional>
#include <memory>
#include <optional>
#include <set>
#include <vector>

namespace open_water {

/// The one water that is open: alone owns it, what was derived from it, its file, and what can be
/// undone. Every change comes through an edit; each is kept in the file at once, in the background.
/// Says which kind of thing changed, what is not kept and why, and what is older than the water;
/// knows no widget.
class OpenWater : public QObject {
    Q_OBJECT
public:
    explicit OpenWater(QObject* parent = nullptr);
    ~OpenWater() override;

    /// Where waters live that have no name, each from its first edit on.
    void keepUnnamedIn(const QString& folder);
    [[nodiscard]] const std::optional<UnnamedWaters>& unnamedWaters() const { return unnamed_; }
    /// What the steps of waters are round in that are made from now on, and of the one that is open
    /// as long as nothing is in it.
    void countNewWatersIn(contours::CountsIn unit);

    /// Opens a water file, or makes a new one; what was open is closed, with all its edits kept:
    /// where they cannot be kept, or the file cannot be used, it stays open as it was.
    [[nodiscard]] base::Result<void> open(const QString& path);
    [[nodiscard]] base::Result<void> create(const QString& path, const QString& name);
    /// open() in the background, with opened() or failed(), and openingEnded() in any case.
    void startOpening(const QString& path);
    /// What opens waters: for progress and cancel.
    jobs::JobRunner& opening() { return opening_; }
    /// From now on the water lives in this new file, in the background, with moved() or failed().
    /// A file without a name is removed then; any other stays as it was last kept.
    void moveTo(const QString& path);

    /// True where there is a file, or something that belongs in one.
    [[nodiscard]] bool isOpen() const { return keeper_.hasFile() || !keeper_.unkept().empty(); }
    /// True where the water lives in the folder of waters without a name, or would.
    [[nodiscard]] bool isUnnamed() const;
    /// True where what is changed cannot be kept in this file, for whatever reason.
    [[nodiscard]] bool isReadOnly() const { return keeper_.isReadOnly(); }
    /// True where a newer version of the program keeps the file, so that it is only looked at.
    [[nodiscard]] bool isOfNewerVersion() const { return keeper_.isOfNewerVersion(); }
    [[nodiscard]] QString path() const { return keeper_.path(); }
    /// Who has the water, where somebody else does: it is looked at here, and what that one saves
    /// is shown as it comes; once he lets it go, it can be changed here.
    [[nodiscard]] std::optional<store::Owner> owner() const { return keeper_.owner(); }
    Follower& follower() { return follower_; }

    /// Never null; what is shared stays as it is when the water changes.
    [[nodiscard]] std::shared_ptr<const water::Water> water() const { return water_; }
    /// What was made of it last; whether it is of now tells isCurrent().
    [[nodiscard]] const water::Derived& derived() const { return derived_; }
    /// Tomorrow as last worked out; null before that.
    [[nodiscard]] std::shared_ptr<const water::PlannedDay> planned() const { return planned_; }
    /// True where tomorrow was worked out from the water, and the map of it, as they are now.
    [[nodiscard]] bool isPlanCurrent() const;
    /// What a plan or a proposal made now would be made from.
    [[nodiscard]] Basis basisOfNow() const;
    /// Why tomorrow could not be worked out from the water as it is; nothing where it was not
    /// tried.
    [[nodiscard]] const std::optional<base::Error>& whyNoPlan() const { return whyNoPlan_; }
    /// True where `step` was made from the water as it is now.
    [[nodiscard]] bool isCurrent(water::Step step) const;

    /// True while the map or tomorrow is being made anew.
    [[nodiscard]] bool isBeingMade() const;

    QUndoStack& undoStack() { return undoStack_; }
    /// For progress and cancel.
    jobs::JobRunner& jobs() { return jobs_; }

    /// Makes again, in the background, whatever no longer holds, up to `step`.
    void deriveUpTo(water::Step step);
    /// Draws the water with everything chosen anew, where after small edits some was kept.
    void drawAfresh();
    /// Divides the water into sections without regard to the borders that they have; their numbers
    /// go with their water all the same.
    void divideAfresh();
    /// Works out tomorrow in the background; derives first what is missing. Where the water changes
    /// meanwhile it is done again, until what is shown is of the water as it is.
    void planTomorrow();

    /// Called with nothing once what was asked for holds, or with the reason why it does not.
    using WhenCurrent = std::function<void(const base::Result<void>&)>;
    /// Calls `then` once tomorrow is of the water as it is now: at once, or after it was worked out
    /// anew. For whatever gives a plan away: nothing old may leave the house.
    void whenPlanIsCurrent(WhenCurrent then);
    /// The same for the map and all that is found in it.
    void whenMapIsCurrent(WhenCurrent then);

    /// What is kept, what is not, and why; to be listened to as well.
    [[nodiscard]] Keeper& keeper() { return keeper_; }
    /// Waits until every edit is in the file or has been tried again. \return whether all are.
    bool finishKeeping() { return keeper_.finish(); }
    /// The user says that what could not be kept may go with the water.
    void letUnkeptGo() { mayUnkeptGo_ = true; }

    /// Only for edits: swaps these parts with those of `other`, keeps them, and tells.
    void swapParts(water::Water& other, const std::vector<water::Part>& parts);

signals:
    void opened();
    /// What can be seen already of the water that is being opened, where none is open yet.
    void glimpsed(const FirstLook& look);
    /// What startOpening() began is over, one way or the other.
    void openingEnded();
    /// The water lives in another file than before, or has got its first; `from` may be empty.
    void moved(const QString& from);
    void changed(const std::set<water::Part>& parts);
    void derivedChanged();
    void plannedChanged();
    /// Something went wrong in the background; one sentence for the user.
    void failed(const base::Error& error);
    /// What just happened: "Drawn in 0.8 s: 112,400 cells of 5 m".
    void happened(const QString& sentence);

private:
    [[nodiscard]] base::Result<void> leave();
    void readInBackground(const QString& path, std::function<void(const base::Error&)> fail);
    void takeFile(WaterFile file);
    void keepFound();
    [[nodiscard]] Found foundNow() const;
    [[nodiscard]] const water::Stamps& wanted() const;
    void startDeriving(water::Derived before, water::Step step);
    void takeDerived(water::Derived derived);
    void noteNumbers(water::Derived& derived);
    void takePlan(water::Derived derived, std::shared_ptr<const water::PlannedDay> planned);
    void takeNoPlan(const base::Error& error);
    void tellStopped();
    static void tell(std::vector<WhenCurrent>& waiting, const base::Result<void>& outcome);

    std::optional<UnnamedWaters> unnamed_;
    contours::CountsIn newCountIn_ = contours::CountsIn::metres;
    bool mayUnkeptGo_ = false;
    std::shared_ptr<const water::Water> water_;
    int waters_ = 0; ///< Counts them: what was made of one is never taken for another.
    water::Derived derived_;
    RecentlyDerived recent_;
    mutable std::shared_ptr<const water::Water> wantedOf_; ///< Whose stamps `wanted_` are.
    mutable water::Stamps wanted_;
    std::shared_ptr<const water::PlannedDay> planned_;
    /// Of the last plan; the jobs' own, which run one after the other.
    std::shared_ptr<water::Workings> workings_ = std::make_shared<water::Workings>();
    Basis planBasis_;
    std::optional<base::Error> whyNoPlan_;
    std::vector<WhenCurrent> awaitingPlan_;
    std::vector<WhenCurrent> awaitingMap_;
    QUndoStack undoStack_;
    jobs::JobRunner jobs_;
    jobs::JobRunner opening_;
    Keeper keeper_;
    Follower follower_{keeper_};
};

} // namespace open_water
