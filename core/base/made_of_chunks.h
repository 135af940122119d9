// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/shared_chunks.h"

#include <unordered_map>

namespace base {

/// What is made of each chunk of a long list: after a change only of the chunk that it touched.
/// Holds what was made of the list asked about last.
template <class T, class Made>
class MadeOfChunks {
public:
    using Pointer = std::shared_ptr<const Made>;

    /// One for each chunk, in order. `make` always has to give the same for the same items, until
    /// forget().
    template <class Make>
    [[nodiscard]] std::vector<Pointer> of(const SharedChunks<T>& list, const Make& make) {
        std::vector<Pointer> all;
        std::unordered_map<typename SharedChunks<T>::ChunkPointer, Pointer> known;
        for (const auto& chunk : list.chunks()) {
            const auto before = known_.find(chunk);
            all.push_back(before != known_.end()
                              ? before->second
                              : std::make_shared<const Made>(make(chunk->items())));
            known.emplace(chunk, all.back());
        }
        known_ = std::move(known);
        return all;
    }
    void forget() { known_.clear(); }

private:
    std::unordered_map<typename SharedChunks<T>::ChunkPointer, Pointer> known_;
};

} // namespace base
