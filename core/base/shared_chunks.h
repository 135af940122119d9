// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/chunk.h"
#include "core/base/is_alone.h"

#include <algorithm>
#include <initializer_list>

namespace base {

/// A long list that is changed in places. It is kept in chunks that its copies share: a copy costs
/// a pointer, and a change one chunk and the pointers to the others, however long the list is. It
/// reads like a const list; copies may be read from any thread.
template <class T>
class SharedChunks {
public:
    using ChunkPointer = std::shared_ptr<Chunk<T>>;
    using const_iterator = ChunkWalk<T>;
    using iterator = const_iterator;
    using value_type = T;
    using size_type = std::size_t;
    using const_reference = const T&;

    /// Where an item stands.
    struct Place {
        std::size_t chunk = 0;
        std::size_t item = 0; ///< Within the chunk.
    };

    SharedChunks() = default;
    /// Not explicit: a list is what a vector becomes once it is kept.
    SharedChunks(std::vector<T> items) {
        for (std::size_t from = 0; from < items.size(); from += usual) {
            const std::size_t count = std::min(usual, items.size() - from);
            own().chunks.push_back(chunkOf(items.begin() + signedOf(from), count));
        }
        countAnew();
    }
    SharedChunks(std::initializer_list<T> items) : SharedChunks(std::vector<T>(items)) {}

    [[nodiscard]] const_iterator begin() const { return {chunks(), 0}; }
    [[nodiscard]] const_iterator end() const { return {chunks(), chunks().size()}; }
    [[nodiscard]] std::size_t size() const { return index_ ? index_->size : 0; }
    [[nodiscard]] bool empty() const { return size() == 0; }
    [[nodiscard]] const T& operator[](std::size_t i) const {
        const Place at = placeOf(i);
        return chunks()[at.chunk]->items()[at.item];
    }
    [[nodiscard]] const T& front() const { return chunks().front()->items().front(); }
    [[nodiscard]] const T& back() const { return chunks().back()->items().back(); }
    [[nodiscard]] std::vector<T> copied() const { return {begin(), end()}; }

    /// In order, none of them empty.
    [[nodiscard]] typename ChunkWalk<T>::Chunks chunks() const {
        using Chunks = typename ChunkWalk<T>::Chunks;
        return index_ ? Chunks(index_->chunks) : Chunks();
    }
    /// \param i below size().
    [[nodiscard]] Place placeOf(std::size_t i) const {
        const auto after = std::ranges::upper_bound(index_->starts, i);
        const auto chunk = static_cast<std::size_t>(after - index_->starts.begin()) - 1;
        return {chunk, i - index_->starts[chunk]};
    }
    /// The other way round.
    [[nodiscard]] std::size_t positionOf(Place at) const {
        return index_->starts[at.chunk] + at.item;
    }
    /// What `join` makes of one number for each chunk, which `make` works out once a chunk: of
    /// `first` where the list is empty.
    template <class Make, class Join>
    [[nodiscard]] std::uint64_t joined(std::size_t slot, const Make& make, const Join& join,
                                       std::uint64_t first) const {
        for (const ChunkPointer& chunk : chunks()) {
            first = join(first, chunk->workedOutOnce(slot, make));
        }
        return first;
    }

    /// One item, to be changed. What is given holds until this list is copied, changed or gone; ask
    /// anew after that.
    [[nodiscard]] T& edit(std::size_t i) {
        const Place at = placeOf(i);
        std::vector<T> items = takeOut(at.chunk);
        T& item = items[at.item];
        own().chunks[at.chunk] = std::make_shared<Chunk<T>>(std::move(items));
        return item; // a vector that is moved keeps its items where they are
    }
    /// \param i where it stands then; up to size().
    void insert(std::size_t i, T item) {
        if (empty()) {
            *this = SharedChunks(std::initializer_list<T>{std::move(item)});
            return;
        }
        const bool isLast = i == size();
        const Place at =
            isLast ? Place{chunks().size() - 1, chunks().back()->items().size()} : placeOf(i);
        std::vector<T> items = takeOut(at.chunk);
        items.insert(items.begin() + signedOf(at.item), std::move(item));
        std::vector<ChunkPointer>& all = own().chunks;
        if (items.size() > most) {
            const std::size_t half = items.size() / 2;
            all.insert(all.begin() + signedOf(at.chunk) + 1,
                       chunkOf(items.begin() + signedOf(half), items.size() - half));
            items.resize(half);
        }
        all[at.chunk] = std::make_shared<Chunk<T>>(std::move(items));
        countAnew();
    }
    void push_back(T item) { insert(size(), std::move(item)); }
    void erase(std::size_t i) {
        const Place at = placeOf(i);
        std::vector<T> items = takeOut(at.chunk);
        items.erase(items.begin() + signedOf(at.item));
        std::vector<ChunkPointer>& all = own().chunks;
        if (items.empty()) {
            all.erase(all.begin() + signedOf(at.chunk));
        } else {
            all[at.chunk] = std::make_shared<Chunk<T>>(std::move(items));
        }
        countAnew();
    }

    /// True where both share one list, so that nothing in them can differ.
    [[nodiscard]] bool isSameAs(const SharedChunks& other) const { return index_ == other.index_; }
    friend bool operator==(const SharedChunks& a, const SharedChunks& b) {
        return a.isSameAs(b) || (a.size() == b.size() && isSameInTurn(a, b));
    }

private:
    /// Small enough that copying one is not noticed, large enough that there are few.
    static constexpr std::size_t usual = 128;
    static constexpr std::size_t most = 2 * usual;

    struct Index {
        std::vector<ChunkPointer> chunks;
        std::vector<std::size_t> starts; ///< How many items stand before each chunk.
        std::size_t size = 0;
    };

    static std::ptrdiff_t signedOf(std::size_t i) { return static_cast<std::ptrdiff_t>(i); }
    static ChunkPointer chunkOf(typename std::vector<T>::iterator first, std::size_t count) {
        return std::make_shared<Chunk<T>>(
            std::vector<T>(std::move_iterator(first), std::move_iterator(first + signedOf(count))));
    }

    Index& own() {
        if (!index_ || !isAlone(index_)) {
            index_ = index_ ? std::make_shared<Index>(*index_) : std::make_shared<Index>();
        }
        return *index_;
    }
    /// The items of a chunk, in whose place another is to be put: what was made of it does not hold
    /// for them.
    std::vector<T> takeOut(std::size_t position) {
        const ChunkPointer& chunk = own().chunks[position];
        const auto items = chunk->items();
        return isAlone(chunk) ? std::move(*chunk).takenOut()
                              : std::vector<T>(items.begin(), items.end());
    }

    void countAnew() {
        Index& index = own();
        index.starts.clear();
        index.size = 0;
        for (const ChunkPointer& chunk : index.chunks) {
            index.starts.push_back(index.size);
            index.size += chunk->items().size();
        }
        if (index.size == 0) {
            index_.reset();
        }
    }

    /// Chunks that both share are passed over.
    static bool isSameInTurn(const SharedChunks& a, const SharedChunks& b) {
        Place inA;
        Place inB;
        while (inA.chunk < a.chunks().size()) {
            const auto restA = a.chunks()[inA.chunk]->items().subspan(inA.item);
            const auto restB = b.chunks()[inB.chunk]->items().subspan(inB.item);
            const std::size_t count = std::min(restA.size(), restB.size());
            if (restA.data() != restB.data() &&
                !std::ranges::equal(restA.first(count), restB.first(count))) {
                return false;
            }
            inA =
                count < restA.size() ? Place{inA.chunk, inA.item + count} : Place{inA.chunk + 1, 0};
            inB =
                count < restB.size() ? Place{inB.chunk, inB.item + count} : Place{inB.chunk + 1, 0};
        }
        return true;
    }

    std::shared_ptr<Index> index_; ///< Null: nothing in it.
};

} // namespace base
