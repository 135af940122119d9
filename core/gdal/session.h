// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"

#include <string>

namespace gdal {

/// While it lives, GDAL is set up and its complaints on this thread are gathered here instead of
/// being written to standard error. For the insides of this folder.
class Session {
public:
    Session();
    ~Session();
    Session(const Session&) = delete;
    Session& operator=(const Session&) = delete;
    Session(Session&&) = delete;
    Session& operator=(Session&&) = delete;

    /// True once something failed since the beginning or the last forget().
    [[nodiscard]] bool hasFailed() const { return failed_; }
    /// The first complaint in GDAL's words; empty where there was none.
    [[nodiscard]] const std::string& complaint() const { return complaint_; }
    void forget();
    /// `what`, with the complaint in brackets, as an error.
    [[nodiscard]] base::Error error(base::ErrorKind kind, std::string what, std::string where,
                                    std::string whatToDo) const;

private:
    friend void hear(Session& session, bool isFailure, const char* message);
    bool failed_ = false;
    std::string complaint_;
};

} // namespace gdal
