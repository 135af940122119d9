// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

namespace wording {

/// One function for each kind that a variant may hold; a kind without one does not compile.
template <class... Functions>
struct ByKind : Functions... {
    using Functions::operator()...;
};
template <class... Functions>
ByKind(Functions...) -> ByKind<Functions...>; // Clang 16 finds none by itself.

} // namespace wording
