// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_chunks.h"

namespace base {

/// How many items two lists surely have in common, by the chunks that they share and without
/// looking at an item.
struct InCommon {
    std::size_t ahead = 0;  ///< From the first one on.
    std::size_t behind = 0; ///< Up to the last one; none of them counts as ahead too.
};

/// Lists that are equal may share nothing, and then have nothing in common here.
template <class T>
[[nodiscard]] InCommon inCommon(const SharedChunks<T>& a, const SharedChunks<T>& b) {
    const auto chunksOfA = a.chunks();
    const auto chunksOfB = b.chunks();
    const std::size_t shorter = std::min(chunksOfA.size(), chunksOfB.size());
    InCommon common;
    std::size_t ahead = 0;
    for (; ahead < shorter && chunksOfA[ahead] == chunksOfB[ahead]; ++ahead) {
        common.ahead += chunksOfA[ahead]->items().size();
    }
    for (std::size_t k = 1; k + ahead <= shorter; ++k) {
        const auto& chunk = chunksOfA[chunksOfA.size() - k];
        if (chunk != chunksOfB[chunksOfB.size() - k]) {
            break;
        }
        common.behind += chunk->items().size();
    }
    return common;
}

} // namespace base
