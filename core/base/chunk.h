// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <iterator>
#include <memory>
#include <span>
#include <utility>
#include <vector>

namespace base {

/// Items that stand one after another in a long list. They never change.
template <class T>
class Chunk {
public:
    explicit Chunk(std::vector<T> items) : items_(std::move(items)) {}

    [[nodiscard]] std::span<const T> items() const { return items_; }
    /// The items, to be changed; the chunk is done with.
    [[nodiscard]] std::vector<T> takenOut() && { return std::move(items_); }

    /// Places for numbers that are worked out once a chunk.
    static constexpr std::size_t numbersKept = 6;
    /// The number that `make` works out of the items: when it is first asked for, known to all
    /// lists with this chunk from then on. One slot always has to be asked with the same `make`; a
    /// zero is worked out again each time.
    template <class Make>
    [[nodiscard]] std::uint64_t workedOutOnce(std::size_t slot, const Make& make) const {
        std::atomic<std::uint64_t>& known = workedOut_.at(slot);
        std::uint64_t number = known.load(std::memory_order_relaxed);
        if (number == 0) {
            number = make(items()); // two threads at once come to the same number
            known.store(number, std::memory_order_relaxed);
        }
        return number;
    }

private:
    std::vector<T> items_;
    mutable std::array<std::atomic<std::uint64_t>, numbersKept> workedOut_{};
};

/// Goes through the items of chunks in order; an iterator of them.
template <class T>
class ChunkWalk {
public:
    using iterator_category = std::bidirectional_iterator_tag;
    using value_type = T;
    using difference_type = std::ptrdiff_t;
    using pointer = const T*;
    using reference = const T&;
    using Chunks = std::span<const std::shared_ptr<Chunk<T>>>;

    ChunkWalk() = default;
    /// From the first item of this chunk on, none of which is empty.
    ChunkWalk(Chunks chunks, std::size_t chunk) : chunks_(chunks) { enter(chunk); }

    [[nodiscard]] reference operator*() const { return *item_; }
    [[nodiscard]] pointer operator->() const { return item_; }
    ChunkWalk& operator++() {
        if (++item_ == items().data() + items().size()) {
            enter(chunk_ + 1);
        }
        return *this;
    }
    ChunkWalk& operator--() {
        if (item_ == nullptr || item_ == items().data()) {
            enter(chunk_ - 1);
            item_ += items().size();
        }
        --item_;
        return *this;
    }
    ChunkWalk operator++(int) { return std::exchange(*this, std::next(*this)); }
    ChunkWalk operator--(int) { return std::exchange(*this, std::prev(*this)); }
    friend bool operator==(const ChunkWalk& a, const ChunkWalk& b) { return a.item_ == b.item_; }

private:
    void enter(std::size_t chunk) {
        chunk_ = chunk;
        item_ = chunk < chunks_.size() ? items().data() : nullptr;
    }
    [[nodiscard]] std::span<const T> items() const { return chunks_[chunk_]->items(); }

    Chunks chunks_;
    std::size_t chunk_ = 0;
    const T* item_ = nullptr; ///< Null at the end.
};

} // namespace base
