// SPDX-License-Identifier: GPL-3.0-or-later
#pragma once

#include <cstddef>
#include <cstdint>
#include <cstring>
#include <span>
#include <type_traits>
#include <vector>

namespace store {

/// Values one behind the other, as their bytes lie in this machine.
class ResultWriter {
public:
    static constexpr bool isReading = false;
    template <class T>
    using Of = const T;

    template <class T>
    void number(T value) {
        numbers(std::span(&value, 1));
    }
    template <class T>
    void numbers(std::span<T> values) {
        static_assert(std::is_trivially_copyable_v<T>);
        const auto bytes = std::as_bytes(values);
        bytes_.insert(bytes_.end(), bytes.begin(), bytes.end());
    }
    /// What was asked for cannot be written.
    void fail() { isFine_ = false; }
    [[nodiscard]] bool isFine() const { return isFine_; }
    [[nodiscard]] const std::vector<std::byte>& bytes() const { return bytes_; }

private:
    std::vector<std::byte> bytes_;
    bool isFine_ = true;
};

/// The same values in the same order. Bytes that are none of ours do no harm: what is not there
/// stays as it was, nothing is made larger than what is there, and isFine() tells afterwards.
class ResultReader {
public:
    static constexpr bool isReading = true;
    template <class T>
    using Of = T;

    explicit ResultReader(std::span<const std::byte> bytes) : left_(bytes) {}

    template <class T>
    void number(T& value) {
        numbers(std::span(&value, 1));
    }
    template <class T>
    void numbers(std::span<T> values) {
        static_assert(std::is_trivially_copyable_v<T>);
        if (values.size_bytes() > left_.size()) {
            fail();
            return;
        }
        if (!values.empty()) {
            std::memcpy(values.data(), left_.data(), values.size_bytes());
        }
        left_ = left_.subspan(values.size_bytes());
    }
    /// How many things of at least so many bytes come next; zero for more than can be there.
    [[nodiscard]] std::size_t count(std::size_t leastBytes) {
        std::uint64_t many = 0;
        number(many);
        if (many > left_.size() / leastBytes) {
            fail();
            return 0;
        }
        return static_cast<std::size_t>(many);
    }
    void fail() {
        isFine_ = false;
        left_ = {};
    }
    [[nodiscard]] bool isFine() const { return isFine_; }
    /// Fine, and nothing is left over.
    [[nodiscard]] bool isWhole() const { return isFine_ && left_.empty(); }

private:
    std::span<const std::byte> left_;
    bool isFine_ = true;
};

} // namespace store
