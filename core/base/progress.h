// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <atomic>
#include <string_view>

namespace base {

/// How a long job tells how far it is and learns whether to stop. It knows no thread; whoever
/// starts the job does.
///
/// A job calls `tell(share)` now and then with its own share done, 0 to 1, and gives up with
/// base::cancelled() as soon as `stopAsked()` is true (within 0.3 s). The default tells nobody and
/// never stops.
class Progress {
public:
    Progress() = default;
    Progress(const Progress&) = delete;
    Progress& operator=(const Progress&) = delete;
    Progress(Progress&&) = delete;
    Progress& operator=(Progress&&) = delete;
    virtual ~Progress() = default;

    /// A new part of the work begins: "drawing the water".
    virtual void begin(std::string_view part) { static_cast<void>(part); }

    /// Share of the present part that is done, 0 to 1.
    virtual void tell(double share) { static_cast<void>(share); }

    /// True once the user has asked to stop. May be called from any thread.
    [[nodiscard]] virtual bool stopAsked() const { return false; }
};

} // namespace base
