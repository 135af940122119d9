// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/days/day_context.h"
#include "app/days/step_body.h"
#include "app/widgets/amount_field.h"
#include "app/wording/words.h"

#include <QPointer>

#include <functional>

namespace days {

/// The line of a closed step.
struct DayStepLine {
    QString words;
    bool isStale = false;
};

/// How one amount is typed.
struct AmountEntry {
    QString label;
    QString help;
    std::function<bool(const QString&)> isRight;
    QString whenEmpty; ///< Null where the field may not be empty.
    QString hint;      ///< Beside what is wrong: "a length such as 12ft or 3.6 m".
};

/// One step of planning or of looking back, shown from the open water.
class DayStep : public StepBody {
    Q_OBJECT
public:
    explicit DayStep(DayContext context) : context_(context) {}

    /// Shows the water as it is now. \return its line when closed.
    virtual DayStepLine refresh() = 0;

signals:
    /// What the step shows has changed by itself.
    void lineChanged();

protected:
    [[nodiscard]] wording::Words words() const {
        return wording::Words(context_.preferences.units());
    }
    [[nodiscard]] const water::Water& water() const { return *context_.open.water(); }
    /// A field whose wrong input is kept, marked, and explained below it.
    widgets::AmountField* addAmount(const AmountEntry& entry,
                                    const std::function<void(const QString&)>& enter);
    /// The speed of the boat: one amount of the plan, asked for wherever a way takes time.
    widgets::AmountField* addBoatSpeed(const QString& help);
    void tell(const base::Error& error) { emit context_.open.failed(error); }
    /// Starts a job of the open water. `then` is called with what it gives, in the window's thread,
    /// unless the step is gone by then: the water may outlive what is shown of it.
    template <class T>
    void startJob(const QString& title, jobs::JobRunner::Work<T> work,
                  std::function<void(base::Result<T>)> then) {
        context_.open.jobs().start<T>(
            title, std::move(work),
            [step = QPointer<DayStep>(this), then = std::move(then)](base::Result<T> made) {
                if (step) {
                    then(std::move(made));
                }
            });
    }

    DayContext context_;
};

} // namespace days
