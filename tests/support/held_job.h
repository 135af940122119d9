// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "app/jobs/job_runner.h"

#include <future>
#include <memory>

namespace support {

/// A job that keeps a runner busy until it is let go: what is started after it waits, however fast
/// the machine.
class HeldJob {
public:
    explicit HeldJob(jobs::JobRunner& runner) {
        runner.start<void>(
            QStringLiteral("Holding"),
            [gate = gate_](base::Progress& progress) -> base::Result<void> {
                gate->get_future().wait();
                return progress.stopAsked() ? base::Result<void>(std::unexpected(base::cancelled()))
                                            : base::Result<void>();
            },
            [](const base::Result<void>&) {});
    }
    ~HeldJob() { letGo(); }
    HeldJob(const HeldJob&) = delete;
    HeldJob& operator=(const HeldJob&) = delete;
    HeldJob(HeldJob&&) = delete;
    HeldJob& operator=(HeldJob&&) = delete;

    void letGo() {
        if (!isLetGo_) {
            isLetGo_ = true;
            gate_->set_value();
        }
    }

private:
    std::shared_ptr<std::promise<void>> gate_ = std::make_shared<std::promise<void>>();
    bool isLetGo_ = false;
};

} // namespace support
