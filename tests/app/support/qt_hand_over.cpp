// SPDX-License-Identifier: GPL-3.0-or-later
// For the thread sanitizer alone (preset tsan). Qt is not built with it, so that it does not see
// that what one thread hands to another through Qt is handed over. Our own calls of the three doors
// between threads come through here (the linker's --wrap), and are told to it; whatever else two
// threads share has to hold without.
#include <QObject>
#include <QThreadPool>

#include <functional>
#include <memory>
#include <utility>

#include <sanitizer/tsan_interface.h>

namespace {

/// A call that another thread is to make.
class HandedOver : public QtPrivate::QSlotObjectBase {
public:
    explicit HandedOver(QtPrivate::QSlotObjectBase* call) : QSlotObjectBase(&act), call_(call) {
        __tsan_release(this);
    }

private:
    static void act(int what, QSlotObjectBase* self, QObject* receiver, void** arguments, bool*) {
        auto* handed = static_cast<HandedOver*>(self);
        if (what == Call) {
            __tsan_acquire(handed);
            handed->call_->call(receiver, arguments);
        } else if (what == Destroy) {
            __tsan_acquire(handed);
            handed->call_->destroyIfLastRef();
            delete handed;
        }
    }
    QtPrivate::QSlotObjectBase* call_;
};

} // namespace

// NOLINTBEGIN(bugprone-reserved-identifier): the linker's names
extern "C" {
bool __real__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
    QObject* object, QtPrivate::QSlotObjectBase* call, Qt::ConnectionType type, void* answer);
bool __wrap__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
    QObject* object, QtPrivate::QSlotObjectBase* call, Qt::ConnectionType type, void* answer) {
    return __real__ZN11QMetaObject16invokeMethodImplEP7QObjectPN9QtPrivate15QSlotObjectBaseEN2Qt14ConnectionTypeEPv(
        object, new HandedOver(call), type, answer);
}

void __real__ZN11QThreadPool5startESt8functionIFvvEEi(QThreadPool* pool, std::function<void()> work,
                                                      int priority);
void __wrap__ZN11QThreadPool5startESt8functionIFvvEEi(QThreadPool* pool, std::function<void()> work,
                                                      int priority) {
    auto shared = std::make_shared<std::function<void()>>(std::move(work));
    __tsan_release(shared.get());
    const void* const door = shared.get();
    __real__ZN11QThreadPool5startESt8functionIFvvEEi(
        pool,
        [pool, door, shared = std::move(shared)]() mutable {
            __tsan_acquire(const_cast<void*>(door));
            (*shared)();
            *shared = nullptr;
            __tsan_release(pool);
        },
        priority);
}

bool __real__ZN11QThreadPool11waitForDoneEi(QThreadPool* pool, int most_ms);
bool __wrap__ZN11QThreadPool11waitForDoneEi(QThreadPool* pool, int most_ms) {
    const bool isDone = __real__ZN11QThreadPool11waitForDoneEi(pool, most_ms);
    __tsan_acquire(pool);
    return isDone;
}
}
// NOLINTEND(bugprone-reserved-identifier)
