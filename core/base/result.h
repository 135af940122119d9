// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/error.h"

#include <expected>

namespace base {

/// A value, or the error that tells why there is none.
template <class T>
using Result = std::expected<T, Error>;

/// Shorthand for returning an error from a function that gives a Result.
[[nodiscard]] inline std::unexpected<Error>
fail(ErrorKind kind, std::string what, std::string where = {}, std::string whatToDo = {}) {
    return std::unexpected(Error{kind, std::move(what), std::move(where), std::move(whatToDo)});
}

} // namespace base
