package org.thresholdregister.platform.accounts;

import jakarta.persistence.LockModeType;
import java.util.List;
import java.util.Optional;
import org.springframework.data.jpa.repository.Lock;
import org.springframework.data.repository.Repository;

interface UserAccountRepository extends Repository<UserAccount, Long> {

    UserAccount save(UserAccount account);

    Optional<UserAccount> findByUsername(String username);

    @Lock(LockModeType.PESSIMISTIC_WRITE)
    Optional<UserAccount> findForUpdateByUsername(String username);

    List<UserAccount> findAllByDemoOrderByUsername(boolean demo);

    boolean existsByUsername(String username);

    boolean existsByDemo(boolean demo);
}
