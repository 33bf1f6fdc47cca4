#include "output/fingerprint.hpp"

#include <openssl/evp.h>

#include <array>
#include <stdexcept>

#include <fmt/format.h>
#include <fmt/ranges.h>

namespace tinworm::output {

std::string sha256(std::string_view bytes) {
  std::array<unsigned char, EVP_MAX_MD_SIZE> digest{};
  unsigned int length = 0;
  if (EVP_Digest(bytes.data(), bytes.size(), digest.data(), &length, EVP_sha256(), nullptr) != 1) {
    throw std::runtime_error("SHA-256 is not to be had from this OpenSSL");
  }
  return fmt::format("{:02x}", fmt::join(digest.begin(), digest.begin() + length, ""));
}

}  // namespace tinworm::output
