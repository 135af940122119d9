// SPDX-License-Identifier: GPL-3.0-or-later
#include "core/acts/notes.h"

#include <algorithm>

namespace acts {

using base::Result;
using water::Water;

namespace {

/// The list with those of `more` that it does not hold yet, whatever their ids. \param next the
/// first id to give.
template <class T>
void addNew(base::SharedList<T>& list, std::vector<T> more, std::int64_t next) {
    using Id = decltype(T::id);
    std::vector<T> known = list;
    for (T& one : known) {
        one.id = {};
    }
    std::vector<T> fresh;
    for (T& one : more) {
        one.id = {};
        if (std::ranges::find(known, one) == known.end()) {
            known.push_back(one);
            one.id = Id(next++);
            fresh.push_back(one);
        }
    }
    if (!fresh.empty()) {
        std::vector<T>& items = list.edit();
        items.insert(items.end(), fresh.begin(), fresh.end());
    }
}

/// \return whether there was one with its id.
template <class T>
bool putInPlace(base::SharedList<T>& list, const T& one) {
    const auto at = std::ranges::find(list, one.id, &T::id);
    if (at == list.end()) {
        return false;
    }
    const auto position = static_cast<std::size_t>(at - list.begin());
    list.edit()[position] = one;
    return true;
}

/// \return whether there was one with that id.
template <class T, class Id>
bool takeOut(base::SharedList<T>& list, Id id) {
    return std::ranges::find(list, id, &T::id) != list.end() &&
           std::erase_if(list.edit(), [id](const T& one) { return one.id == id; }) > 0;
}

Result<Water> ifDone(bool isDone, Water after, const char* what) {
    if (!isDone) {
        return base::fail(base::ErrorKind::wrongUse, what, "notes",
                          "choose one of those there are");
    }
    return after;
}

constexpr auto noLead = "the water has no such sounding by lead line";
constexpr auto noNote = "the water has no such weed note";

} // namespace

Result<Water> addLeadLine(const Water& water, std::vector<soundings::LeadLineSounding> soundings) {
    Water after = water;
    addNew(after.leadLine, std::move(soundings), water::freshId(water));
    return after;
}

Result<Water> changeLeadLine(const Water& water, const soundings::LeadLineSounding& sounding) {
    Water after = water;
    const bool isDone = putInPlace(after.leadLine, sounding);
    return ifDone(isDone, std::move(after), noLead);
}

Result<Water> removeLeadLine(const Water& water, soundings::LeadLineId id) {
    Water after = water;
    const bool isDone = takeOut(after.leadLine, id);
    return ifDone(isDone, std::move(after), noLead);
}

Result<Water> addWeedNotes(const Water& water, std::vector<weed::WeedNote> notes) {
    Water after = water;
    addNew(after.weedNotes, std::move(notes), water::freshId(water));
    return after;
}

Result<Water> removeWeedNote(const Water& water, weed::WeedNoteId id) {
    Water after = water;
    const bool isDone = takeOut(after.weedNotes, id);
    return ifDone(isDone, std::move(after), noNote);
}

} // namespace acts
