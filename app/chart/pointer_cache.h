// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <deque>
#include <functional>
#include <memory>
#include <mutex>

namespace chart {

/// What is dear to make from a value that never changes, made once for each such value and known by
/// its address; the few used last are kept. Safe from several threads.
template <class Value, class Made>
class PointerCache {
public:
    explicit PointerCache(std::size_t most = 4) : most_(most) {}

    [[nodiscard]] std::shared_ptr<const Made> of(const std::shared_ptr<const Value>& value,
                                                 const std::function<Made(const Value&)>& make) {
        const std::lock_guard lock(mutex_);
        for (const Entry& entry : entries_) {
            // Same address and still alive: the very same value.
            if (entry.value.lock() == value) {
                return entry.made;
            }
        }
        entries_.push_front({value, std::make_shared<const Made>(make(*value))});
        if (entries_.size() > most_) {
            entries_.pop_back();
        }
        return entries_.front().made;
    }

private:
    struct Entry {
        std::weak_ptr<const Value> value;
        std::shared_ptr<const Made> made;
    };
    std::size_t most_;
    std::mutex mutex_;
    std::deque<Entry> entries_;
};

} // namespace chart
