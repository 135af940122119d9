// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstdint>
#include <string>

namespace store {

/// The program that alone may write a water file, by its own words.
struct Owner {
    std::string program;      ///< "meremark"; empty where it did not say.
    std::int64_t process = 0; ///< Its number on that host.
    std::string host;

    bool operator==(const Owner&) const = default;
    /// "meremark (process 4711 on loch)"; "another program" where it did not say.
    [[nodiscard]] std::string text() const;
};

} // namespace store
