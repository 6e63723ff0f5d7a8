#include "page/qr.hpp"

#include <memory>
#include <stdexcept>

#include <qrencode.h>

namespace shaftcut {

Code qr_code(const std::string& text)
{
    const std::unique_ptr<QRcode, void (*)(QRcode*)> made(QRcode_encodeString(text.c_str(), 0, QR_ECLEVEL_Q, QR_MODE_8, 1), QRcode_free);
    if (!made) throw std::invalid_argument("no code can hold \"" + text + "\"");
    Code code;
    code.modules = made->width;
    code.box.width = code.box.height = made->width * qr_module;
    for (int i = 0; i < made->width * made->width; ++i) code.dark.push_back((made->data[i] & 1) != 0);
    return code;
}

std::string qrencode_in_use() { return QRcode_APIVersionString(); }

}  // namespace shaftcut
