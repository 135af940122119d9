// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <string>

namespace base {

/// What sort of failure this is; decides the exit code of meremark-batch and the way the desk shows
/// it.
enum class ErrorKind {
    wrongUse, ///< The caller asked for something that makes no sense (a setting out of its range).
    unusableInput,    ///< A file or an entry cannot be used.
    unwritableOutput, ///< A file cannot be written.
    damagedWater,     ///< A water file is not whole or contradicts itself.
    waterInUse,       ///< Another program has the water file; it can be written once that lets go.
    waterChanged,     ///< Another program has saved the water since it was read; read it again.
    cancelled,        ///< The user stopped it.
};

/// A failure as a value. Each part is a plain phrase; sentence() joins them into one line for the
/// user.
struct Error {
    ErrorKind kind = ErrorKind::unusableInput;
    std::string what;     ///< What is wrong: "the file is empty".
    std::string where;    ///< File, line, row or field; empty where there is none.
    std::string whatToDo; ///< What the user can do about it; never empty for a user's mistake.

    /// "where: what; what to do" on one line.
    [[nodiscard]] std::string sentence() const;
};

/// The error that every cancelled job returns.
[[nodiscard]] Error cancelled();

} // namespace base
