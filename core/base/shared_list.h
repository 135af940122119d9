// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include "core/base/is_alone.h"

#include <array>
#include <atomic>
#include <cstddef>
#include <cstdint>
#include <initializer_list>
#include <memory>
#include <utility>
#include <vector>

namespace base {

/// A list that its copies share: a copy costs a pointer, however long the list is. It reads like a
/// const vector and is changed through edit() alone, which parts it from its copies first. Copies
/// may be read from any thread.
template <class T>
class SharedList {
public:
    using value_type = T;
    using size_type = std::size_t;
    using const_reference = const T&;
    using const_iterator = typename std::vector<T>::const_iterator;
    using iterator = const_iterator;

    SharedList() = default;
    /// Not explicit: a list is what a vector becomes once nobody changes it any more.
    SharedList(std::vector<T> items) : shared_(std::make_shared<Shared>()) {
        shared_->items = std::move(items);
    }
    SharedList(std::initializer_list<T> items) : SharedList(std::vector<T>(items)) {}

    [[nodiscard]] const std::vector<T>& all() const {
        static const std::vector<T> none;
        return shared_ ? shared_->items : none;
    }
    // Not explicit either: whoever reads a vector reads this without a copy.
    operator const std::vector<T>&() const { return all(); }

    [[nodiscard]] const_iterator begin() const { return all().begin(); }
    [[nodiscard]] const_iterator end() const { return all().end(); }
    [[nodiscard]] std::size_t size() const { return all().size(); }
    [[nodiscard]] bool empty() const { return all().empty(); }
    [[nodiscard]] const T& operator[](std::size_t i) const { return all()[i]; }
    [[nodiscard]] const T& at(std::size_t i) const { return all().at(i); }
    [[nodiscard]] const T& front() const { return all().front(); }
    [[nodiscard]] const T& back() const { return all().back(); }
    [[nodiscard]] const T* data() const { return all().data(); }

    /// The items, to be changed: copied first where another list shares them. What is given holds
    /// until this list is copied, changed or gone; ask anew after that.
    [[nodiscard]] std::vector<T>& edit() {
        auto own = std::make_shared<Shared>();
        if (shared_ && isAlone(shared_)) {
            own->items = std::move(shared_->items);
        } else if (shared_) {
            own->items = shared_->items;
        }
        shared_ = std::move(own);
        return shared_->items;
    }

    /// True where both share one list, so that nothing in them can differ.
    [[nodiscard]] bool isSameAs(const SharedList& other) const { return shared_ == other.shared_; }

    /// Places for numbers that are worked out once a list.
    static constexpr std::size_t numbersKept = 3;
    /// The number that `make` works out of the items: worked out when it is first asked for, known
    /// to all copies from then on. One slot always has to be asked with the same `make`, which
    /// gives no zero.
    template <class Make>
    [[nodiscard]] std::uint64_t workedOutOnce(std::size_t slot, const Make& make) const {
        if (!shared_) {
            return make(all());
        }
        std::atomic<std::uint64_t>& known = shared_->workedOut.at(slot);
        std::uint64_t number = known.load(std::memory_order_relaxed);
        if (number == 0) {
            number = make(all()); // two threads at once come to the same number
            known.store(number, std::memory_order_relaxed);
        }
        return number;
    }

    friend bool operator==(const SharedList& a, const SharedList& b) {
        return a.isSameAs(b) || a.all() == b.all();
    }
    friend bool operator==(const SharedList& a, const std::vector<T>& b) { return a.all() == b; }

private:
    struct Shared {
        std::vector<T> items;
        std::array<std::atomic<std::uint64_t>, numbersKept> workedOut{};
    };

    std::shared_ptr<Shared> shared_; ///< Null: nothing in it.
};

} // namespace base
