package wetside.shop;

/** Whose machine it is. */
public record Owner(long id, String name, String phone, String email, String address, long version) {}
