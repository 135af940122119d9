// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"
#include "app/open_water/open_water.h"
#include "core/store/copies.h"

#include <QObject>
#include <QTimer>

#include <chrono>

namespace open_water {

/// Takes copies of the water that is open, by the rule of `copies`, in the background: as it was
/// when it was opened, and then as often as the rule says where it was changed since.
class CopyTaker : public QObject {
    Q_OBJECT
public:
    CopyTaker(OpenWater& open, store::Copies copies, QObject* parent = nullptr);

    [[nodiscard]] const store::Copies& copies() const { return copies_; }
    /// Takes one where one is due.
    void takeIfDue();
    /// Waits for the one that is being taken.
    void finish() { runner_.finishAll(); }

signals:
    /// One has been taken.
    void taken();

private:
    OpenWater& open_;
    store::Copies copies_;
    QTimer timer_;
    bool hasFailed_ = false; ///< Told once, until one works again.
    jobs::JobRunner runner_;
};

} // namespace open_water
